package dev.quoin.job;

import dev.quoin.art.Template;
import dev.quoin.plate.Group;

/**
 * What is chosen for a row.
 *
 * @param templateName how files name its template
 */
record Choice(Template template, String templateName, Group group) {}
