package dev.quoin.code;

/** Carries a refusal out of the steps of making a code; never leaves the package. */
final class RefusalException extends Exception {
    private final transient RefusedCode refusal;

    RefusalException(String message, String remedy) {
        super(message);
        this.refusal = new RefusedCode(message, remedy);
    }

    RefusedCode refusal() {
        return refusal;
    }
}
