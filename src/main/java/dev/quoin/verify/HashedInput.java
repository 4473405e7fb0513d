package dev.quoin.verify;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A file being read whose SHA-256 is known once all of it has been: each byte is read once. */
final class HashedInput extends FilterInputStream {
    private final MessageDigest digest;

    private HashedInput(InputStream in, MessageDigest digest) {
        super(new DigestInputStream(in, digest));
        this.digest = digest;
    }

    static HashedInput around(InputStream in) {
        try {
            return new HashedInput(in, MessageDigest.getInstance("SHA-256"));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Reads what is left, and gives the hash of all, in lower-case hexadecimal digits. */
    String finish() throws IOException {
        byte[] buffer = new byte[1 << 16];
        while (in.read(buffer) >= 0) {
            continue;
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
