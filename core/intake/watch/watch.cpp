#include "core/intake/watch/watch.h"

#include "core/intake/log/log_names.h"
#include "core/intake/log/log_places.h"
#include "core/intake/log/map_request.h"
#include "core/intake/log/remembered.h"
#include "core/intake/log/store_log.h"
#include "core/intake/time/date_order.h"
#include "core/store/readings/readings.h"
#include "core/store/records/equipment.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <fstream>

namespace holdband::intake {

namespace {

/// The header and the text after the lines already read.
std::shared_ptr<const std::string> freshText(const std::string& path, const FileSeen& seen,
                                             std::int64_t until)
{
    std::ifstream file(path, std::ios::binary);
    std::string text, line;
    for (std::int64_t i = 0; i < seen.layout.lastHeaderLine() && std::getline(file, line); ++i)
        text += line + "\n";
    file.clear();
    file.seekg(seen.bytes);
    std::string fresh(static_cast<std::size_t>(until - seen.bytes), '\0');
    file.read(fresh.data(), static_cast<std::streamsize>(fresh.size()));
    fresh.resize(static_cast<std::size_t>(std::max<std::streamsize>(file.gcount(), 0)));
    return std::make_shared<const std::string>(text + fresh);
}

/// One poll of a watched path.
class WatchPoll {
public:
    WatchPoll(const store::LogbookFile& logbook, const store::Watch& watch, const Zone& zone,
              WatchMemory& memory)
        : m_logbook(logbook), m_watch(watch), m_memory(memory),
          m_state(watchStateFrom(watch.state)), m_today(isoDate(zone.localDate(logbook.now())))
    {
        m_report.path = watch.path;
    }

    WatchReport run()
    {
        std::vector<std::string> files = logsOf(m_watch.path, PackedLogs::leaveOut);
        if (files.size() > mostWatchedFiles) {
            m_report.problems.push_back(
                Phrase::tr("%1 holds %2 logs: only the first %3 by name are read; move old ones to "
                           "another folder")
                    .with(m_watch.path, std::to_string(files.size()),
                          std::to_string(mostWatchedFiles)));
            files.resize(mostWatchedFiles);
        }
        for (const std::string& file : files)
            lookAt(file);
        return std::move(m_report);
    }

private:
    /// A file that needs the user's attention is not read again until something has changed.
    void lookAt(const std::string& path)
    {
        // Before reading, so that a write during the reading is seen next time.
        const auto stamp = stampOf(path);
        if (const auto known = m_memory.problemOf(m_watch.id, path, stamp)) {
            m_report.problems.push_back(*known);
            return;
        }
        m_memory.forget(m_watch.id, path);
        const Done done = take(path);
        if (done)
            return;
        m_report.problems.push_back(done.error().sentence());
        if (done.error().kind == ProblemKind::data)
            m_memory.note(m_watch.id, path, stamp, m_report.problems.back());
    }

    std::optional<FileSeen> seenOf(const std::string& name) const
    {
        for (const auto& [file, seen] : m_state) {
            if (file == name)
                return seen;
        }
        return std::nullopt;
    }

    Done take(const std::string& path)
    {
        const std::string name = fileName(path);
        const auto seen = seenOf(name);
        const auto look = inspectFile(path, seen);
        HOLDBAND_TRY(look);
        if (look->news == FileNews::nothing)
            return {};
        if (look->news == FileNews::shrunk)
            m_report.remarks.push_back(
                Phrase::tr("%1 became shorter: it was read again").with(name));
        if (look->news == FileNews::replaced)
            m_report.remarks.push_back(
                Phrase::tr("%1 is a different file now: it was read again").with(name));
        if (look->news == FileNews::grown && look->bytewise) {
            const Done done = takeGrown(path, *seen, *look);
            if (done || done.error().kind != ProblemKind::data)
                return done;
        }
        return takeWhole(path, seen, *look);
    }

    /// Reads only the new rows. If they alone are ambiguous, the full file is read.
    Done takeGrown(const std::string& path, const FileSeen& seen, const FileState& look)
    {
        ImportOptions options;
        options.path = fileName(path);
        options.text = freshText(path, seen, look.bytes);
        options.map = seen.map;
        options.layout = seen.layout;
        auto request = requestFor(m_logbook, options);
        HOLDBAND_TRY(request);
        request->linesBefore = seen.lines - seen.layout.lastHeaderLine();
        return keep(path, *request, seen, look);
    }

    Done takeWhole(const std::string& path, const std::optional<FileSeen>& seen,
                   const FileState& look)
    {
        const auto spec = columnMapFrom(m_watch.spec);
        auto looked =
            spec ? openPreviewWith(m_logbook, {path}, *spec) : openPreview(m_logbook, {path});
        HOLDBAND_TRY(looked);
        FileSeen next = seen.value_or(FileSeen{});
        next.map = std::move(looked->map);
        next.layout = looked->preview.layout;
        ImportOptions options;
        options.path = path;
        options.map = next.map;
        options.layout = next.layout;
        const Done done = storeAll(path, options, next, look);
        const bool open = !done && done.error().decision == Decision::dateOrder;
        if (!open || next.map.dateOrder || !next.map.dateOrderFound)
            return done;
        next.map.dateOrder = next.map.dateOrderFound;
        options.map = next.map;
        m_report.remarks.push_back(
            Phrase::tr("%1: its dates fit two orders and are taken as %2, as in the last file of "
                       "its kind")
                .with(fileName(path), orderText(*next.map.dateOrder)));
        return storeAll(path, options, next, look);
    }

    Done storeAll(const std::string& path, const ImportOptions& options, const FileSeen& next,
                  const FileState& look)
    {
        auto request = requestFor(m_logbook, options);
        HOLDBAND_TRY(request);
        request->readUpTo = look.bytes;
        return keep(path, *request, next, look);
    }

    Done keep(const std::string& path, const LogRequest& request, FileSeen seen,
              const FileState& look)
    {
        auto file = readLog(request);
        HOLDBAND_TRY(file);
        if (!stillHas(path, look)) // replaced meanwhile, so that a line may be cut: the next poll
            return {};             // looks again
        if (file->dateOrder)
            seen.map.dateOrder = file->dateOrder;
        if (file->decimalSign == ',')
            seen.map.decimalSign = ',';
        const std::string name = fileName(path);
        auto change = store::Change::begin(
            m_logbook, {store::HistoryVerb::watchRowsAdded, {name}, {}, store::HistoryKind::own});
        HOLDBAND_TRY(change);
        auto report = storeRows(*change, *file, seen);
        HOLDBAND_TRY(report);
        seen.bytes = look.bytes;
        seen.lines = look.lines;
        seen.digest = look.digest;
        WatchState state = m_state;
        std::erase_if(state, [&](const auto& each) { return each.first == name; });
        state.emplace_back(name, seen);
        HOLDBAND_TRY(store::setWatchState(*change, m_watch.id, watchStateText(state)));
        HOLDBAND_TRY(change->commit());
        m_state = std::move(state);
        m_report.added += report->added();
        remark(*report);
        return {};
    }

    /// Stores the rows in today's import of the file, or in a new one if there is none or it was
    /// withdrawn.
    Result<ImportReport> storeRows(const store::Change& change, const LogFile& file, FileSeen& seen)
    {
        StoreOptions options;
        if (seen.import > 0 && seen.day == m_today && store::isInForce(change, {seen.import}))
            options.extend = store::ImportId{seen.import};
        auto report = storeLog(m_logbook, change, file, options);
        HOLDBAND_TRY(report);
        if (report->import) {
            seen.import = report->import->value;
            seen.day = m_today;
        }
        return report;
    }

    void remark(const ImportReport& report)
    {
        const std::string& name = report.file.fileName;
        if (report.file.rejectedTotal > 0)
            m_report.remarks.push_back(Phrase::tr("%1: %2 rejected, the first in line %3: %4")
                                           .with(name, std::to_string(report.file.rejectedTotal),
                                                 std::to_string(report.file.rejected.front().line),
                                                 report.file.rejected.front().reason));
        if (report.conflicting() > 0)
            m_report.remarks.push_back(
                Phrase::counted("%1: %n readings differ from what is stored, which is unchanged",
                                "%1: %n readings differ from what is stored, which is unchanged",
                                static_cast<std::uint64_t>(report.conflicting()))
                    .with(name));
    }

    const store::LogbookFile& m_logbook;
    const store::Watch& m_watch;
    WatchMemory& m_memory;
    WatchState m_state;
    std::string m_today;
    WatchReport m_report;
};

} // namespace

Result<std::vector<WatchReport>> pollWatches(const store::LogbookFile& logbook, WatchMemory& memory)
{
    HOLDBAND_TRY(memory.begin(logbook));
    auto watches = store::readWatches(logbook);
    HOLDBAND_TRY(watches);
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    std::vector<WatchReport> reports;
    for (const store::Watch& watch : *watches)
        reports.push_back(WatchPoll(logbook, watch, *zone, memory).run());
    HOLDBAND_TRY(memory.end(logbook));
    return reports;
}

} // namespace holdband::intake
