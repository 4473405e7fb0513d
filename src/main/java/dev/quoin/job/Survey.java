package dev.quoin.job;

import dev.quoin.plate.GroupSurvey;
import java.util.List;
import java.util.Map;

/**
 * What all rows together are: which groups there are, and which row belongs to which.
 *
 * @param groups by the first row of each
 * @param rowsOfGroup the indexes of each group's rows, in working order; rows with errors are in none
 * @param leftOut the indexes of rows with errors
 */
record Survey(List<GroupSurvey> groups, Map<GroupSurvey, List<Integer>> rowsOfGroup, List<Integer> leftOut) {}
