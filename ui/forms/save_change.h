// One change of the logbook on the session's worker: begun, done and committed there, answered in
// the window's thread.
#pragma once

#include "core/store/logbook_file.h"

#include <QObject>
#include <functional>

namespace holdband::ui {

class Session;

/// `entry` for the history. A Problem, also of a logbook open for reading only, comes to
/// `deliver`; what was kept is announced before it is delivered.
void keepChange(Session& session, QObject* context, store::HistoryEntry entry,
                std::function<Done(const store::Change&)> work, std::function<void(Done)> deliver);

} // namespace holdband::ui
