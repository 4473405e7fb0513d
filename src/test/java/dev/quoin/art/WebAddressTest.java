package dev.quoin.art;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WebAddressTest {
    /** RFC 3986, section 2.5: octets of the value in UTF-8, those that are not unreserved percent-encoded. */
    @Test
    void aValueStandsInAnAddressWithoutACharsetBeingNamed() {
        assertEquals(
                "https://tags.example/?n=%C3%89milie%20%26%20Co.",
                Merged.columns("Name").says("https://tags.example/?n=${name?url}", "Émilie & Co."));
    }
}
