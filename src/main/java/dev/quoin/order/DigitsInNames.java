package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Digits in a column of people's names, known by its header and by having few of them. */
final class DigitsInNames implements ColumnDoubts {
    /** How forms in the languages of Europe head a column of names. */
    private static final Set<String> NAME_WORDS = Set.of(
            "name",
            "names",
            "forename",
            "firstname",
            "lastname",
            "surname",
            "vorname",
            "nachname",
            "nom",
            "prénom",
            "nombre",
            "apellido",
            "apellidos",
            "nome",
            "cognome",
            "sobrenome",
            "naam",
            "voornaam",
            "achternaam",
            "navn",
            "fornavn",
            "etternavn",
            "efternavn",
            "namn",
            "förnamn",
            "efternamn",
            "nimi",
            "etunimi",
            "sukunimi",
            "nazwisko",
            "imię",
            "jméno",
            "příjmení",
            "meno",
            "priezvisko",
            "név",
            "nume",
            "prenume",
            "ime",
            "prezime",
            "имя",
            "фамилия",
            "όνομα");
    /** Words beside "name" that make it no person's. */
    private static final Set<String> OTHER_NAMES =
            Set.of("product", "file", "item", "article", "street", "model", "user");

    private static final int OTHERS_TO_ONE = 4;

    private final boolean names;
    private int with;
    private int without;

    DigitsInNames(String header) {
        List<String> words = Arrays.asList(header.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
        names = words.stream().anyMatch(NAME_WORDS::contains) && words.stream().noneMatch(OTHER_NAMES::contains);
    }

    @Override
    public void see(String value) {
        if (hasDigit(value)) {
            with++;
        } else {
            without++;
        }
    }

    @Override
    public Optional<Doubt> judge(String value) {
        boolean rare = names && without >= OTHERS_TO_ONE * with;
        return rare && hasDigit(value)
                ? Optional.of(new Doubt(Quoted.of(value) + " has a digit in a name", "correct it if it is a slip"))
                : Optional.empty();
    }

    private static boolean hasDigit(String value) {
        return value.codePoints().anyMatch(Character::isDigit);
    }
}
