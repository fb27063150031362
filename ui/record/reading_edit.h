// What can be done to chosen readings of a sensor or a meter, each as one change of the logbook.
// Pure, without widgets: a Problem says what is still missing.
#pragma once

#include "core/text/numbers.h"
#include "ui/record/readings_view.h"

#include <functional>
#include <string>
#include <vector>

namespace holdband::ui {

/// Makes and commits the change.
using ReadingEdit = std::function<Done(const store::LogbookFile&)>;

/// `rows` of the view, in order. Of a sensor the whole stretch from the first to the last is left
/// out, of a meter each chosen reading.
Result<ReadingEdit> leaveOut(const ReadingsView& view, const std::vector<std::size_t>& rows,
                             const std::string& why);
Result<ReadingEdit> bringBack(const ReadingsView& view, const std::vector<std::size_t>& rows);
/// What was logged or typed first stays on record, with when and why it was corrected.
Result<ReadingEdit> correct(const ReadingsView& view, const std::vector<std::size_t>& rows,
                            const Decimal& value, const std::string& why);

} // namespace holdband::ui
