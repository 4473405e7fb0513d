package dev.quoin.drawing;

import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.apache.batik.util.ParsedURL;

/** What Batik asks of the program around it: no fonts, no files, no network, no scripts; errors are remembered. */
final class QuietAgent extends UserAgentAdapter {
    private static final float MM_PER_PIXEL = 25.4f / 96;

    private boolean complained;

    /** Whether Batik complained (about a style, that is) since this was last asked. */
    boolean takeComplaint() {
        boolean was = complained;
        complained = false;
        return was;
    }

    @Override
    public void displayError(String message) {
        complained = true;
    }

    @Override
    public void displayError(Exception e) {
        complained = true;
    }

    @Override
    public void displayMessage(String message) {
        // Progress and the like are of no use here.
    }

    @Override
    public float getPixelUnitToMillimeter() {
        return MM_PER_PIXEL;
    }

    @Override
    public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL document) {
        return new NoLoadExternalResourceSecurity();
    }

    @Override
    public void checkLoadExternalResource(ParsedURL resource, ParsedURL document) {
        getExternalResourceSecurity(resource, document).checkLoadExternalResource();
    }

    @Override
    public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
        return new NoLoadScriptSecurity(type);
    }

    /** The family of text that names none; the adapter's own list would name fonts that nobody asked for. */
    @Override
    public String getDefaultFontFamily() {
        return "sans-serif";
    }

    @Override
    public FontFamilyResolver getFontFamilyResolver() {
        return NoFonts.INSTANCE;
    }

    /** Text is not set in type here. */
    private enum NoFonts implements FontFamilyResolver {
        INSTANCE;

        @Override
        public GVTFontFamily resolve(String family) {
            throw noFonts();
        }

        @Override
        public GVTFontFamily resolve(String family, FontFace face) {
            throw noFonts();
        }

        @Override
        public GVTFontFamily loadFont(java.io.InputStream in, FontFace face) {
            throw noFonts();
        }

        @Override
        public GVTFontFamily getDefault() {
            throw noFonts();
        }

        @Override
        public GVTFontFamily getFamilyThatCanDisplay(char c) {
            throw noFonts();
        }

        private static IllegalStateException noFonts() {
            return new IllegalStateException("a drawing needs no font");
        }
    }
}
