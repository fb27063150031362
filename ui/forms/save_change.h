// Makes one change of the logbook on the session's worker: begun, done and committed there; the
// result arrives in the window's thread.
#pragma once

#include "core/store/logbook_file.h"

#include <QObject>
#include <functional>

namespace holdband::ui {

class Session;

/// `entry` for the history. A Problem, also that the logbook is open for reading only, is passed to
/// `deliver`; a saved change is announced before that.
void saveChange(Session& session, QObject* context, store::HistoryEntry entry,
                std::function<Done(const store::Change&)> work, std::function<void(Done)> deliver);

} // namespace holdband::ui
