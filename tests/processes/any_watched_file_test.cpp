// For any sequence of what loggers, people and disks do to a watched file: the readings stored are
// those of the complete lines that were there at a look, none twice, none lost, none half read.
#include "core/disk.h"
#include "core/intake/log/import.h"
#include "core/intake/watch/watch.h"
#include "core/store/records/journal.h"
#include "core/store/safety/soundness.h"
#include "core/text/times.h"
#include "tests/faults/faulty_vfs.h"
#include "tests/processes/some_runs.h"
#include "tests/random.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <algorithm>
#include <cerrno>
#include <fstream>
#include <map>
#include <optional>

namespace holdband::test {
namespace {

namespace fs = std::filesystem;
using store::LogbookFile;

/// A line of a log: the sensor, the minute since `someday`, the value.
struct Written {
    std::string sensor;
    int minute = 0;
    double value = 0.0;
};

/// The name of a file that can't be opened now, in any folder; empty: none.
std::string& unreadableName()
{
    static std::string path;
    return path;
}

int openUnlessUnreadable(const char* path, int flags, mode_t mode)
{
    if (fs::path(path).filename() == unreadableName()) {
        errno = EACCES;
        return -1;
    }
    return systemDisk().open(path, flags, mode);
}

/// The system's disk, on which a file can be made unreadable, also for root.
class DiskWithUnreadable {
public:
    DiskWithUnreadable()
    {
        calls() = systemDisk();
        calls().open = openUnlessUnreadable;
        replaceDisk(&calls());
    }
    ~DiskWithUnreadable()
    {
        replaceDisk(nullptr);
        unreadableName().clear();
    }
    DiskWithUnreadable(const DiskWithUnreadable&) = delete;
    DiskWithUnreadable& operator=(const DiskWithUnreadable&) = delete;

private:
    static DiskCalls& calls()
    {
        static DiskCalls table = systemDisk();
        return table;
    }
};

/// The logger and its file. What it writes may reach the file in pieces.
class LoggedFile {
public:
    explicit LoggedFile(std::string path) : m_path(std::move(path))
    {
        m_lineEnd = between(0, 2) == 0 ? "\r\n" : "\n";
        startFile();
    }

    void logRows(int count)
    {
        for (int i = 0; i < count; ++i) {
            const int minute = between(0, 9) == 0 ? between(0, 40) : m_minute++;
            logRow(minute, 18.0 + between(0, 40) / 10.0);
        }
    }
    /// Some of what is under way arrives; without a file all of it is lost.
    void arrive(std::size_t bytes)
    {
        if (!isThere())
            return m_underWay.clear();
        bytes = std::min(bytes, m_underWay.size());
        std::ofstream(m_path, std::ios::binary | std::ios::app) << m_underWay.substr(0, bytes);
        m_underWay.erase(0, bytes);
    }
    void arriveWhole() { arrive(m_underWay.size()); }

    void rotate(bool overlapping)
    {
        arriveWhole();
        if (isThere())
            fs::rename(m_path, m_path + "." + std::to_string(++m_rotated));
        repeatLast(overlapping ? between(1, 4) : 0);
    }
    /// As a program does that copies the log away and empties it.
    void empty(bool overlapping)
    {
        arriveWhole();
        if (!isThere())
            return;
        fs::resize_file(m_path, 0);
        repeatLast(overlapping ? between(1, 4) : 0);
    }
    void shorten()
    {
        arriveWhole();
        if (!isThere())
            return;
        const std::string text = bytes();
        std::vector<std::size_t> ends;
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (text[i] == '\n')
                ends.push_back(i + 1);
        }
        if (!ends.empty())
            fs::resize_file(
                m_path,
                ends[static_cast<std::size_t>(between(0, static_cast<int>(ends.size()) - 1))]);
    }
    void replaceByOtherColumns()
    {
        arriveWhole();
        if (fs::is_directory(m_path))
            return;
        fs::remove(m_path);
        m_columns = {m_columns.sensor == "Beer" ? "Room" : "Beer", between(0, 1) == 0};
        startFile();
    }
    void vanish()
    {
        arriveWhole();
        if (!isThere() || fs::exists(aside()))
            return;
        fs::rename(m_path, aside());
        m_asideColumns = m_columns;
    }
    void comeBack()
    {
        if (fs::is_directory(m_path))
            fs::remove_all(m_path);
        if (fs::exists(m_path) || !fs::exists(aside()))
            return;
        m_underWay.clear();
        fs::rename(aside(), m_path);
        m_columns = m_asideColumns;
    }
    void becomeFolder()
    {
        vanish();
        if (!fs::exists(m_path))
            fs::create_directory(m_path);
    }

    /// The complete lines that a look sees now.
    std::vector<Written> visible() const
    {
        std::vector<Written> seen;
        if (!isThere() || unreadableName() == fs::path(m_path).filename())
            return seen;
        const std::string text = bytes();
        std::size_t at = 0;
        for (std::size_t end = text.find('\n'); end != text.npos; end = text.find('\n', at)) {
            const std::string line = text.substr(at, end + 1 - at);
            at = end + 1;
            if (const auto found = m_lines.find(line); found != m_lines.end())
                seen.push_back(found->second);
        }
        return seen;
    }
    bool isThere() const { return fs::is_regular_file(m_path); }
    const std::string& path() const { return m_path; }

private:
    struct Columns {
        std::string sensor = "Beer";
        bool timeFirst = true;
    };

    std::string aside() const { return m_path + ".aside"; }
    std::string bytes() const
    {
        std::ifstream file(m_path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    void startFile()
    {
        if (!fs::exists(m_path))
            std::ofstream(m_path, std::ios::binary).flush();
        m_underWay += (m_columns.timeFirst ? "Time,Größe," + m_columns.sensor + " (°C)"
                                           : m_columns.sensor + " (°C),Time,Größe") +
                      m_lineEnd;
    }
    void repeatLast(int rows)
    {
        startFile();
        const int first = std::max(0, static_cast<int>(m_logged.size()) - rows);
        for (auto i = static_cast<std::size_t>(first); i < m_logged.size(); ++i) {
            if (m_logged[i].sensor == m_columns.sensor)
                write(m_logged[i]);
        }
    }
    void logRow(int minute, double value)
    {
        m_logged.push_back({m_columns.sensor, minute, value});
        write(m_logged.back());
    }
    void write(const Written& row)
    {
        static const std::vector<std::string> notes{"", "kühl", "\"a, b\"", "🍺", "ok"};
        const std::string time = rfc3339Utc(someday + std::chrono::minutes{row.minute});
        const std::string value = std::to_string(row.value).substr(0, 4);
        const std::string note = notes[static_cast<std::size_t>(between(0, 4))];
        const std::string line = (m_columns.timeFirst ? time + "," + note + "," + value
                                                      : value + "," + time + "," + note) +
                                 m_lineEnd;
        m_lines[line] = {row.sensor, row.minute, std::stod(value)};
        m_underWay += line;
    }

    std::string m_path;
    std::string m_lineEnd;
    Columns m_columns;
    Columns m_asideColumns; ///< of the file that vanished
    int m_minute = 100;
    int m_rotated = 0;
    std::string m_underWay;
    std::vector<Written> m_logged;
    std::map<std::string, Written> m_lines; ///< by their text
};

/// By sensor and minute, the value that was seen first.
using Readings = std::map<std::pair<std::string, int>, double>;

class AnyWatchedFile : public LogbookTest {
public:
    void givesEachReadingOnce();

protected:
    void SetUp() override
    {
        m_files.emplace(path(""));
        m_disk.emplace();
        m_logbook = create();
        addEquipment(*m_logbook);
        auto change = store::Change::begin(*m_logbook, saying("room"));
        ASSERT_TRUE(change);
        Sensor room;
        room.name = "Room";
        room.reads = SensorKind::ambient;
        ASSERT_TRUE(store::addSensor(*change, room));
        ASSERT_TRUE(change->commit());
        fs::create_directory(path("logs"));
    }

    void watch(const std::string& what) const
    {
        auto change = store::Change::begin(*m_logbook, saying("watch"));
        RC_ASSERT(change.has_value());
        RC_ASSERT(store::addWatch(*change, what, "").has_value());
        RC_ASSERT(change->commit().has_value());
    }

    void reopen()
    {
        m_logbook.reset();
        auto opened = LogbookFile::open(path(), store::Access::write, [this] { return m_now; });
        RC_ASSERT(opened.has_value());
        m_logbook = std::move(*opened);
        m_memory = {};
    }

    void look(const LoggedFile& file)
    {
        for (const Written& row : file.visible()) {
            const bool first = m_seen.emplace(std::pair(row.sensor, row.minute), row.value).second;
            m_new += first;
        }
        const auto reports = intake::pollWatches(*m_logbook, m_memory);
        RC_ASSERT(reports.has_value());
        for (const intake::WatchReport& report : *reports)
            m_added += report.added;
        RC_ASSERT(m_added == m_new);
    }

    void note() const
    {
        auto change = store::Change::begin(*m_logbook, saying("note"));
        RC_ASSERT(change.has_value());
        RC_ASSERT(store::addNote(*change, {someday, {}, "note"}).has_value());
        RC_ASSERT(change->commit().has_value());
    }

    Readings stored() const
    {
        Readings all;
        for (const char* sensor : {"Beer", "Room"}) {
            const auto series =
                store::readSeries(*m_logbook, sensor, {instantFromMs(0), instantFromMs(1LL << 42)});
            RC_ASSERT(series.has_value());
            for (std::size_t i = 0; i < series->size(); ++i) {
                const auto minute =
                    std::chrono::duration_cast<std::chrono::minutes>(series->at[i] - someday);
                all[{sensor, static_cast<int>(minute.count())}] = series->value[i];
            }
        }
        return all;
    }

    /// Everything that was seen, in one file, is there already.
    void importAgain()
    {
        for (const char* sensor : {"Beer", "Room"}) {
            std::string text = std::string("Time,") + sensor + " (C)\n";
            std::int64_t rows = 0;
            for (const auto& [place, value] : m_seen) {
                if (place.first != sensor)
                    continue;
                ++rows;
                text += rfc3339Utc(someday + std::chrono::minutes{place.second}) + "," +
                        std::to_string(value).substr(0, 4) + "\n";
            }
            if (rows == 0)
                continue;
            intake::ImportOptions options;
            options.path = "all.csv";
            options.text = std::make_shared<const std::string>(text);
            const auto report = intake::importLog(*m_logbook, options);
            RC_ASSERT(report.has_value());
            RC_ASSERT(report->added() == 0);
            RC_ASSERT(report->alreadyThere() == rows);
            RC_ASSERT(report->conflicting() == 0);
        }
    }

    void step(LoggedFile& file)
    {
        switch (between(0, 15)) {
        case 0:
        case 1:
            return file.logRows(between(1, 5));
        case 2:
        case 3:
            return file.arrive(static_cast<std::size_t>(between(1, 30)));
        case 4:
            return file.arriveWhole();
        case 5:
            return file.rotate(between(0, 1) == 0);
        case 6:
            return file.empty(between(0, 1) == 0);
        case 7:
            return file.shorten();
        case 8:
            return file.replaceByOtherColumns();
        case 9:
            return file.vanish();
        case 10:
            return file.comeBack();
        case 11:
            return file.becomeFolder();
        case 12:
            unreadableName() = unreadableName().empty() ? "probe.csv" : "";
            return;
        case 13:
            return note();
        case 14:
            return reopen();
        default:
            m_now += std::chrono::hours{between(-30, 30)};
        }
    }

    std::optional<faults::UndisturbedFiles> m_files;
    std::optional<DiskWithUnreadable> m_disk;
    std::unique_ptr<LogbookFile> m_logbook;
    intake::WatchMemory m_memory;
    Instant m_now = someday;
    Readings m_seen;
    std::int64_t m_new = 0;
    std::int64_t m_added = 0;
};

void AnyWatchedFile::givesEachReadingOnce()
{
    LoggedFile file(path("logs/probe.csv"));
    reopen(); // with a clock that moves
    watch(file.path());
    if (between(0, 2) == 0)
        watch(path("logs/../logs/probe.csv"));
    if (between(0, 2) == 0)
        watch(path("logs"));
    const int steps = between(1, faults::wantsLongSet() ? 60 : 30);
    for (int i = 0; i < steps; ++i) {
        step(file);
        if (between(0, 1) == 0)
            look(file);
    }
    unreadableName().clear();
    file.comeBack();
    file.arriveWhole();
    look(file);
    look(file);
    RC_ASSERT(stored() == m_seen);
    importAgain();
    const auto damage = store::findDamage(*m_logbook);
    RC_ASSERT(damage && damage->empty());
}

TEST(AnyCourseOf, AWatchedFileGivesEachReadingOnce)
{
    tryOften(15, &AnyWatchedFile::givesEachReadingOnce);
}

} // namespace
} // namespace holdband::test
