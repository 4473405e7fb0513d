package dev.quoin.lettering;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/** The bytes of a font file, fetched where they are asked for: a folder of fonts may hold hundreds of megabytes. */
interface FontData {
    /** Longer than any table of names; what claims to be longer is no font. */
    int LONGEST = 1 << 22;

    /**
     * Some of the bytes.
     *
     * @throws IndexOutOfBoundsException if the file does not hold them
     */
    ByteBuffer at(long offset, int length) throws IOException;

    /** How many there are. */
    long size() throws IOException;

    /** Of a file held in memory. */
    static FontData of(byte[] bytes) {
        return new FontData() {
            @Override
            public ByteBuffer at(long offset, int length) {
                return ByteBuffer.wrap(bytes).slice((int) Math.min(offset, Integer.MAX_VALUE), length);
            }

            @Override
            public long size() {
                return bytes.length;
            }
        };
    }

    /** Of an open file. */
    static FontData of(FileChannel file) {
        return new FontData() {
            @Override
            public ByteBuffer at(long offset, int length) throws IOException {
                if (length < 0 || length > LONGEST || offset + length > file.size()) {
                    throw new IndexOutOfBoundsException();
                }
                ByteBuffer bytes = ByteBuffer.allocate(length);
                while (bytes.hasRemaining() && file.read(bytes, offset + bytes.position()) >= 0) {
                    // Reads on until it has all.
                }
                return bytes.rewind();
            }

            @Override
            public long size() throws IOException {
                return file.size();
            }
        };
    }
}
