package dev.quoin.store;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.Consumer;

/** A file being written that hands on the SHA-256 of its bytes when it is closed. */
final class HashedFile extends FilterOutputStream {
    private static final int BUFFER = 1 << 16;

    private final MessageDigest digest = sha256();
    private final Consumer<String> onClose;
    private boolean closed;

    /** The bytes pass the buffer before they are hashed, so that both happen in large pieces. */
    static OutputStream around(OutputStream out, Consumer<String> onClose) {
        return new BufferedOutputStream(new HashedFile(out, onClose), BUFFER);
    }

    private HashedFile(OutputStream out, Consumer<String> onClose) {
        super(out);
        this.onClose = onClose;
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    @Override
    public void write(int b) throws IOException {
        out.write(b);
        digest.update((byte) b);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        out.write(bytes, from, count);
        digest.update(bytes, from, count);
    }

    @Override
    public void close() throws IOException {
        if (!closed) {
            closed = true;
            super.close();
            onClose.accept(HexFormat.of().formatHex(digest.digest()));
        }
    }
}
