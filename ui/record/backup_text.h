// Texts about a logbook's copies.
#pragma once

#include "core/store/safety/backups.h"

#include <QString>
#include <optional>

namespace holdband::ui {

/// "backed up today 07:06", "backed up yesterday 07:06", "backed up 3 Mar 2026 07:06", "never
/// backed up". `today`: in the logbook's zone.
QString lastBackupText(const std::optional<LocalTime>& last, Date today);

/// The status line with that text: appended to its sentence or its list of parts.
QString withLastBackup(const QString& status, const QString& backup);

/// "7 Mar 2026 07:06"
QString takenText(LocalTime taken);

/// "4.2 MB"
QString sizeText(std::uint64_t bytes);

} // namespace holdband::ui
