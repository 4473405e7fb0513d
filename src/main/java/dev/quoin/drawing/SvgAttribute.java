package dev.quoin.drawing;

/**
 * An attribute of the file.
 *
 * @param namespace its namespace; empty where it has none
 * @param name its name, as written
 * @param value its value, placeholders taken apart
 */
record SvgAttribute(String namespace, String name, VariableText value) {
    private static final String DATA = "data-";

    boolean isData() {
        return namespace.isEmpty() && name.startsWith(DATA) && name.length() > DATA.length();
    }

    String dataName() {
        return name.substring(DATA.length());
    }

    /** Whether what is drawn depends on it and on the values of a row. */
    boolean varies() {
        return !isData() && !value.isConstant();
    }

    String localName() {
        return name.substring(name.indexOf(':') + 1);
    }
}
