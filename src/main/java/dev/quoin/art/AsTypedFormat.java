package dev.quoin.art;

import freemarker.core.Environment;
import freemarker.core.TemplateDateFormat;
import freemarker.core.TemplateDateFormatFactory;
import freemarker.core.UnparsableValueException;
import freemarker.template.TemplateDateModel;
import freemarker.template.TemplateModelException;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Locale;
import java.util.TimeZone;

/** The date format that prints a date of the order as it was typed, and any other as year-month-day. */
final class AsTypedFormat extends TemplateDateFormat {
    /** Its name in FreeMarker's settings. */
    static final String NAME = "typed";

    static final TemplateDateFormatFactory FACTORY = new TemplateDateFormatFactory() {
        @Override
        public TemplateDateFormat get(
                String parameters, int type, Locale locale, TimeZone zone, boolean zoneless, Environment environment) {
            return new AsTypedFormat();
        }
    };

    @Override
    public String formatToPlainText(TemplateDateModel date) throws TemplateModelException {
        return date instanceof TypedDate typed
                ? typed.typed()
                : date.getAsDate()
                        .toInstant()
                        .atZone(ZoneOffset.UTC)
                        .toLocalDate()
                        .toString();
    }

    @Override
    public Date parse(String text, int type) throws UnparsableValueException {
        throw new UnparsableValueException("say the form of the date, as in ?date(\"yyyy-MM-dd\")");
    }

    @Override
    public boolean isLocaleBound() {
        return false;
    }

    @Override
    public boolean isTimeZoneBound() {
        return false;
    }

    @Override
    public String getDescription() {
        return "as typed";
    }
}
