// Tells once which verdicts of an older logbook the present rules change.
#pragma once

namespace holdband::ui {

class NoticeBar;
class Session;

/// Looks in the background; says it in the bar, with a link to the help, and notes in the logbook
/// that it was said. A logbook that is open for reading only says it again the next time.
void tellChangedVerdicts(Session& session, NoticeBar& bar);

} // namespace holdband::ui
