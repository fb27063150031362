#include "ui/window/limits_table.h"

#include "core/exchange/load.h"
#include "core/intake/container/limits.h"
#include "core/intake/csv/tokens.h"
#include "core/intake/log/log.h"
#include "core/intake/watch/watch.h"
#include "core/model/readings.h"
#include "core/model/text_limits.h"
#include "core/store/sqlite/sqlite_error.h"
#include "ui/equipment/round_rows.h"
#include "ui/imports/column_heads.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QLocale>

namespace holdband::ui {

namespace {

QString grouped(std::uint64_t number)
{
    return wordsLocale().toString(static_cast<qulonglong>(number));
}

QString bytesText(std::size_t bytes)
{
    constexpr std::size_t mebibyte = std::size_t{1} << 20;
    return bytes % mebibyte == 0 ? Words::tr("%1 MiB").arg(grouped(bytes / mebibyte))
                                 : Words::tr("%1 bytes").arg(grouped(bytes));
}

} // namespace

std::vector<Limit> allLimits()
{
    return {
        {Words::tr("a name, a label"), bytesText(longestName)},
        {Words::tr("a note, a reason, a remark"), bytesText(longestText)},
        {Words::tr("decimals of a typed reading"), grouped(mostDecimals)},
        {Words::tr("a register's reading"),
         Words::tr("%1 kWh").arg(
             grouped(static_cast<std::uint64_t>(mostOfARegister.kilowattHours())))},
        {Words::tr("rounds a day"), grouped(mostRounds)},
        {Words::tr("columns of a log"), grouped(CsvTokens::maxFields)},
        {Words::tr("columns of a log that the window shows; others are ignored"),
         grouped(ColumnHeads::mostColumns)},
        {Words::tr("one field of a log"), bytesText(CsvTokens::maxField)},
        {Words::tr("one row of a log"), bytesText(CsvTokens::maxRow)},
        {Words::tr("a packed log, as it is"), bytesText(std::size_t{mostPacked})},
        {Words::tr("a packed log, unpacked"), bytesText(std::size_t{mostUnpacked})},
        {Words::tr("a workbook's sheet, JSON lines, standard input"),
         bytesText(std::size_t{mostWhole})},
        {Words::tr("rejected rows that are listed; others are counted"),
         grouped(maxRejectedStored)},
        {Words::tr("logs of a watched folder"), grouped(intake::mostWatchedFiles)},
        {Words::tr("a description file"), bytesText(exchange::largestDescription)},
        {Words::tr("one value in a logbook"), bytesText(store::mostBytesOfValue)},
    };
}

QString limitsTable()
{
    QString table = Words::tr("| what | at most |") + QStringLiteral("\n| --- | --- |\n");
    for (const Limit& limit : allLimits())
        table += QStringLiteral("| %1 | %2 |\n").arg(limit.what, limit.most);
    return table;
}

} // namespace holdband::ui
