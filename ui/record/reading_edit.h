// The edits of selected readings of a sensor or a meter, each as one change of the logbook. Pure,
// without widgets: a Problem names what is still missing.
#pragma once

#include "core/text/numbers.h"
#include "ui/record/readings_view.h"

#include <functional>
#include <string>
#include <vector>

namespace holdband::ui {

/// Makes and commits the change.
using ReadingEdit = std::function<Done(const store::LogbookFile&)>;

/// `rows` of the view, in order. For a sensor the stretch from the first to the last is left out,
/// for a meter each selected reading. `all`: up to the end of the view's span, also if further
/// readings of it are not listed.
Result<ReadingEdit> leaveOut(const ReadingsView& view, const std::vector<std::size_t>& rows,
                             const std::string& why, bool all = false);
Result<ReadingEdit> restore(const ReadingsView& view, const std::vector<std::size_t>& rows);
/// The first logged or typed value remains on record, with the time and the reason of the
/// correction.
Result<ReadingEdit> correct(const ReadingsView& view, const std::vector<std::size_t>& rows,
                            const Decimal& value, const std::string& why);

} // namespace holdband::ui
