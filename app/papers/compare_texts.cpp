#include <QtGlobal>

namespace {

/// What the core says of many records, for the collector of texts, which does not read the core. A
/// test fails while one is missing.
[[maybe_unused]] constexpr const char* kCompareTexts[] = {
    QT_TRANSLATE_NOOP("Papers",
                      "Rescues, drills and tests are not mixed in one figure. Choose one kind."),
    QT_TRANSLATE_NOOP("Papers", "What these shares were counted over is not known here."),
    QT_TRANSLATE_NOOP("Papers", "collapse"),
    QT_TRANSLATE_NOOP("Papers", "call"),
    QT_TRANSLATE_NOOP("Papers", "device arrived"),
    QT_TRANSLATE_NOOP("Papers", "device on"),
    QT_TRANSLATE_NOOP("Papers", "first compressions"),
    QT_TRANSLATE_NOOP("Papers", "electrodes attached"),
    QT_TRANSLATE_NOOP("Papers", "first analysis"),
    QT_TRANSLATE_NOOP("Papers", "first shock"),
    QT_TRANSLATE_NOOP("Papers", "circulation returned"),
    QT_TRANSLATE_NOOP(
        "Papers", "The pause before the first shock differs most: %2 in %1, %4 in %3, %5 apart."),
    QT_TRANSLATE_NOOP(
        "Papers", "The pause after the first shock differs most: %2 in %1, %4 in %3, %5 apart."),
    QT_TRANSLATE_NOOP("Papers", "The longest pause differs most: %2 in %1, %4 in %3, %5 apart."),
    QT_TRANSLATE_NOOP("Papers",
                      "The time from %6 to %7 differs most: %2 in %1, %4 in %3, %5 apart."),
    QT_TRANSLATE_NOOP(
        "Papers", "Largest difference: from %7 to %6. It took %2 in %1 and %4 in %3, %5 apart."),
    QT_TRANSLATE_NOOP(
        "Papers",
        "Largest difference: %6 and %7. In %1, “%7” came %2 before “%6”; in %3, %4 after it."),
    QT_TRANSLATE_NOOP("Papers", "%1: %2 lies above the upper limit: chance alone would rarely "
                                "reach it. Look at what was special."),
    QT_TRANSLATE_NOOP("Papers", "%1: %2 lies below the lower limit: chance alone would rarely "
                                "reach it. Look at what was special."),
    QT_TRANSLATE_NOOP("Papers", "%1 points in a row lie above the line, from %2 to %3; chance "
                                "explains up to %4. Something lasting may have changed."),
    QT_TRANSLATE_NOOP("Papers", "%1 points in a row lie below the line, from %2 to %3; chance "
                                "explains up to %4. Something lasting may have changed."),
    QT_TRANSLATE_NOOP(
        "Papers",
        "From %1 to %2 more points lie high above the line than chance would often put there."),
    QT_TRANSLATE_NOOP(
        "Papers",
        "From %1 to %2 more points lie far below the line than chance would often put there."),
    QT_TRANSLATE_NOOP("Papers", "Crossings of the line from %1 to %2: %3; chance would make at "
                                "least %4. Something may have moved slowly or in steps."),
    QT_TRANSLATE_NOOP("Papers", "%1. Each record counts once."),
    QT_TRANSLATE_NOOP("Papers", "%1. Each point is the middle of the records of its time."),
    QT_TRANSLATE_NOOP("Papers", "%1: share of the records with %2 or more."),
    QT_TRANSLATE_NOOP("Papers", "%1: share of the records below %2."),
    QT_TRANSLATE_NOOP("Papers",
                      "%1, all that was counted in the records of its time taken together."),
    QT_TRANSLATE_NOOP("Papers", "%1 for every %2 of: %3."),
    QT_TRANSLATE_NOOP("Papers", "Share of the records in which a shock was given."),
    QT_TRANSLATE_NOOP("Papers",
                      "The line is the middle of all points: half lie above it, half below."),
    QT_TRANSLATE_NOOP("Papers",
                      "The line is the mean; between the two limits points move by chance alone."),
    QT_TRANSLATE_NOOP("Papers", "From %1 (%2): %4, before %3. That is more than chance explains; "
                                "what caused it this picture cannot say."),
    QT_TRANSLATE_NOOP("Papers", "From %1 (%2): %4, before %3. Chance alone could explain that."),
    QT_TRANSLATE_NOOP("Papers", "Of the stretches between marked days those with fewer than %1 "
                                "points have no limits and no signals: %2 of %3."),
    QT_TRANSLATE_NOOP("Papers", "Of the stretches between marked days those with fewer than %1 "
                                "points have no signals: %2 of %3."),
    QT_TRANSLATE_NOOP("Papers", "Limits of fewer than %1 points may still move."),
    QT_TRANSLATE_NOOP("Papers", "From %1 (%2): fewer than five values before or after it, so "
                                "nothing is compared."),
    QT_TRANSLATE_NOOP("Papers", "Points: %1. With fewer than %2 nothing can be said of a change."),
    QT_TRANSLATE_NOOP("Papers",
                      "Beside that no sign of a change: chance alone explains how the points lie."),
    QT_TRANSLATE_NOOP("Papers", "The values lean to one side: a point beyond a limit says less "
                                "here. The run chart asks nothing of how values are spread."),
    QT_TRANSLATE_NOOP("Papers", "Records in which it is not recorded: %1."),
    QT_TRANSLATE_NOOP("Papers", "Records to which it does not apply: %1."),
    QT_TRANSLATE_NOOP("Papers", "Records without a day, which are in no point: %1."),
    QT_TRANSLATE_NOOP("Papers", "No sign of a change: chance alone explains how these points lie."),
    QT_TRANSLATE_NOOP("Papers", "With %1 points a real change can go unseen."),
    QT_TRANSLATE_NOOP("Papers", "A point beyond the limits"),
    QT_TRANSLATE_NOOP("Papers", "A longer run on one side of the line than chance explains"),
    QT_TRANSLATE_NOOP("Papers", "Fewer crossings of the line than chance explains"),
    QT_TRANSLATE_NOOP("Papers", "Two of three points beyond two deviations on one side"),
    QT_TRANSLATE_NOOP("Papers", "Four of five points beyond one deviation on one side"),
    QT_TRANSLATE_NOOP("Papers", "Eight points in a row on one side of the line"),
    QT_TRANSLATE_NOOP("Papers", "Where none is recorded the middle record has %1, all others have "
                                "%2: more of a difference than chance explains."),
    QT_TRANSLATE_NOOP("Papers", "%1: the middle record has %2, elsewhere it has %3: more of a "
                                "difference than chance explains."),
    QT_TRANSLATE_NOOP("Papers", "No group differs from the others by more than chance explains."),
    QT_TRANSLATE_NOOP("Papers", "In few records a real difference can go unseen."),
    QT_TRANSLATE_NOOP("Papers", "From %1 (%2): no point lies after it."),
    QT_TRANSLATE_NOOP("Papers", "From %1 (%2): no point lies between it and the next marked day."),
    QT_TRANSLATE_NOOP("Papers", "From %1 to %2 (middles): %3 %4, %5 %6."),
    QT_TRANSLATE_NOOP("Papers", "too few for a middle"),
    QT_TRANSLATE_NOOP("Papers", "marked day"),
    QT_TRANSLATE_NOOP("Papers",
                      "%1: %2, far above what is usual here (middle %3). Beside it: %4 %5, %6 %7."),
    QT_TRANSLATE_NOOP("Papers",
                      "%1: %2, far below what is usual here (middle %3). Beside it: %4 %5, %6 %7."),
    QT_TRANSLATE_NOOP("Papers", "%1 – %2: %3, elsewhere %4."),
    QT_TRANSLATE_NOOP("Papers", "Where none is recorded – %1: %2, elsewhere %3."),
    QT_TRANSLATE_NOOP("Papers",
                      "No group differs from the others in any of these figures by more than "
                      "chance explains. In few records a real difference can go unseen."),
    QT_TRANSLATE_NOOP("Papers", "This share alone says little: how long it took and how many "
                                "shocks were given stand beside it."),
    QT_TRANSLATE_NOOP("Papers", "Groups that differ as well: %1."),
    QT_TRANSLATE_NOOP("Papers", "Of so many points chance alone puts about %1 beyond the limits."),
    QT_TRANSLATE_NOOP("Papers", "No record has a value."),
    QT_TRANSLATE_NOOP("Papers", "Too few records for a middle and its interval: %1."),
    QT_TRANSLATE_NOOP("Papers", "Middle of %1 records: %2 (may really be %3 to %4)."),
    QT_TRANSLATE_NOOP("Papers",
                      "Band: middle %1, half of the records between %2 and %3, in a published "
                      "group of rescues (%4). What others measured, not a target."),
    QT_TRANSLATE_NOOP("Papers", "From the call to the first shock, stage by stage. A stage whose "
                                "ends are not recorded is left open."),
    QT_TRANSLATE_NOOP("Papers", "From device on to the first shock, stage by stage. A stage whose "
                                "ends are not recorded is left open."),
    QT_TRANSLATE_NOOP("Papers",
                      "The largest part of the time to the first shock lies between %1 and %2: "
                      "%3, added up over %4 records."),
    QT_TRANSLATE_NOOP("Papers", "%1 of it cannot be divided, as moments are not recorded."),
    QT_TRANSLATE_NOOP("Papers", "That holds records whose first analysis advised no shock: such "
                                "time is not lost."),
    QT_TRANSLATE_NOOP("Papers", "Typically the longest stage is from %1 to %2: %3 in the middle of "
                                "%4 records."),
    QT_TRANSLATE_NOOP("Papers", "Typically another stage is the longest, from %1 to %2: %3 in the "
                                "middle of %4 records. Single records in which the first took very "
                                "long make the difference."),
    QT_TRANSLATE_NOOP("Papers", "The whole takes %1 in the middle of %2 records."),
    QT_TRANSLATE_NOOP("Papers", "Records that give no such moment: %1."),
    QT_TRANSLATE_NOOP("Papers", "%1: %2, far above what is usual here (middle %3)."),
    QT_TRANSLATE_NOOP("Papers", "%1: %2, far below what is usual here (middle %3)."),
    QT_TRANSLATE_NOOP("Papers", "Pause of %1 before a shock; the profile asks for less than %2."),
    QT_TRANSLATE_NOOP("Papers", "Pause of %1 for which no reason is recorded."),
    QT_TRANSLATE_NOOP("Papers", "A shock was advised or charged and not given."),
    QT_TRANSLATE_NOOP("Papers", "The device was set for another age group than the patient's."),
    QT_TRANSLATE_NOOP("Papers", "Nothing in the record shows compressions."),
    QT_TRANSLATE_NOOP("Papers", "Here this is usual and names no record by itself: a pause before "
                                "a shock that is not below the limit of %1, in %2 of %3 records."),
    QT_TRANSLATE_NOOP("Papers", "Here this is usual and names no record by itself: a long pause "
                                "without a recorded reason, in %1 of %2 records."),
    QT_TRANSLATE_NOOP("Papers", "Here this is usual and names no record by itself: a shock that "
                                "was not given, in %1 of %2 records."),
    QT_TRANSLATE_NOOP("Papers", "Here this is usual and names no record by itself: a setting for "
                                "another age group, in %1 of %2 records."),
    QT_TRANSLATE_NOOP("Papers", "Here this is usual and names no record by itself: nothing shows "
                                "compressions, in %1 of %2 records."),
    QT_TRANSLATE_NOOP("Papers", "The limit of the guideline profile in use"),
};

} // namespace
