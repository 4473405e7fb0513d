package dev.quoin.shop;

/** What a material may release under the beam, what the shop advises, and where that is from. */
public record Material(String name, String mayRelease, String advice, String source) {}
