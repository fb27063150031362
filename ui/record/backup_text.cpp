#include "ui/record/backup_text.h"

#include "core/text/times.h"
#include "ui/words/words.h"

#include <QLocale>

namespace holdband::ui {

using std::chrono::days;
using std::chrono::local_days;

QString takenText(LocalTime taken)
{
    const Date day(std::chrono::floor<days>(taken));
    return shown(dateText(day)) + u' ' + shown(clockText(taken));
}

QString lastBackupText(const std::optional<LocalTime>& last, Date today)
{
    if (!last)
        return Words::tr("never backed up");
    const local_days day = std::chrono::floor<days>(*last);
    const QString clock = shown(clockText(*last));
    if (day == local_days(today))
        return Words::tr("backed up today %1").arg(clock);
    if (day == local_days(today) - days{1})
        return Words::tr("backed up yesterday %1").arg(clock);
    return Words::tr("backed up %1").arg(takenText(*last));
}

QString withLastBackup(const QString& status, const QString& backup)
{
    if (status.endsWith(u'.'))
        return status + u' ' + capitalised(backup) + u'.';
    return status + QStringLiteral(" · ") + backup;
}

QString sizeText(std::uint64_t bytes)
{
    return QLocale().formattedDataSize(static_cast<qint64>(bytes), 1, QLocale::DataSizeSIFormat);
}

} // namespace holdband::ui
