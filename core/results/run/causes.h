// Which cause belongs to which excursion: the one of the same side that overlaps it longest, so
// that a cause stays with its excursion when limits or data change a little.
#pragma once

#include "core/model/cause.h"
#include "core/results/run/run_review.h"

#include <optional>
#include <string>

namespace holdband::results {

/// Absent (null) where none was given. `stage` and `excursion` are indices as in
/// review.figures.judged.asPlanned.
const ExcursionCause* causeOf(const RunReview& review, std::size_t stage, std::size_t excursion);

/// The same for an excursion with other limits, by its span and side.
const ExcursionCause* causeAt(const std::vector<store::StoredCause>& causes, Span span, Side side);

/// Such as "lid open, \"bottled a sample\""; empty without a cause.
std::string causeText(const ExcursionCause* cause);

/// For programs: "lid open".
std::string_view causeName(Cause cause);

/// The same for people, in their language.
std::string causeWord(Cause cause);

/// Replaces the excursion's cause and note; removes them if both are empty. Other excursions that
/// shared the old cause still have it.
Done giveCause(const store::Change& change, const RunReview& review, std::size_t stage,
               std::size_t excursion, std::optional<Cause> cause, const std::string& note);

/// The history entry for giving the cause.
store::HistoryEntry causeEntry(const RunReview& review, std::size_t stage, std::size_t excursion);

/// A sentence for each cause that no longer belongs to an excursion.
std::vector<std::string> strayCauses(const RunReview& review);

} // namespace holdband::results
