package dev.quoin.drawing;

/**
 * An attribute with placeholders that changes what is drawn (any but {@code data-*}).
 *
 * @param element whose attribute it is
 * @param name its name, as written
 * @param value its value, unmerged
 */
public record VariableAttribute(Element element, String name, VariableText value) {}
