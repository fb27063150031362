// Speed, memory and growth, compared with a peer in the same run: medians, as ratios. A benchmark,
// never a test. Usage: bench HOLDBAND TRIVIAL_WINDOW FOLDER [ROWS [RUNS]]
#include "core/intake/log/log_reader.h"
#include "core/results/run/run_review.h"
#include "tests/bench/child.h"
#include "tests/bench/lanes.h"
#include "tests/bench/log_data.h"
#include "tests/bench/round_sheet.h"
#include "tests/bench/side_by_side.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <sqlite3.h>

namespace holdband::bench {
namespace {

namespace fs = std::filesystem;

void row(const char* measure, double ours, double peer, const char* target)
{
    std::printf("%-58s %9.3f %9.3f %7.2f   %s\n", measure, ours, peer, ours / peer, target);
    std::fflush(stdout);
}

void amount(const char* measure, double value, const char* unit, const char* target)
{
    std::printf("%-58s %9.1f %-17s   %s\n", measure, value, unit, target);
    std::fflush(stdout);
}

double timed(const std::function<void()>& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The median time of several runs, each after its own preparation.
double medianTime(int runs, const std::function<double()>& once)
{
    std::vector<double> times;
    for (int i = 0; i < runs; ++i)
        times.push_back(once());
    return median(times);
}

class Bench {
public:
    Bench(std::string program, std::string trivialWindow, fs::path folder, int rows, int runs)
        : m_program(std::move(program)), m_trivialWindow(std::move(trivialWindow)),
          m_folder(std::move(folder)), m_rows(rows), m_runs(runs)
    {
    }

    void run()
    {
        makeData();
        std::printf("%-58s %9s %9s %7s   %s\n", "measure", "ours, s", "peer, s", "ratio", "target");
        parse();
        import();
        importAgain();
        openBatch();
        report();
        verdict();
        growth();
        window();
        windowMemory();
        stall();
        lanes();
        sideBySide();
        drawing();
        // Last, because it adds meters to the big logbook.
        amount("a round of eight meters, ten years of rounds behind it",
               roundSheetMs(in("log.holdband"), m_runs), "ms", "< 100");
    }

private:
    std::string in(const char* name) const { return (m_folder / name).string(); }

    void makeData() const
    {
        writeLog(in("log.csv"), m_rows);
        writeDescription(in("log.json"), m_rows);
        writeDescription(in("small.json"), m_rows / 100);
        writePeerScript(in("import.sql"), in("log.csv"), false);
        writePeerScript(in("long.sql"), in("log.csv"), true);
    }

    void fresh(const char* logbook, const char* description) const
    {
        fs::remove(in(logbook));
        runCommand({m_program, "load", in(logbook), in(description)});
    }

    double peerTime(const char* script) const
    {
        return medianTime(m_runs, [&] {
            fs::remove(in("peer.db"));
            return runCommand({"sqlite3", in("peer.db")}, in(script)).seconds;
        });
    }

    void parse() const
    {
        LogRequest request;
        request.path = in("log.csv");
        request.wanted = {{"Vessel", SeriesKind::temperature, "Vessel (F)", {}},
                          {"Air", SeriesKind::temperature, "Air (F)", {}},
                          {"Room", SeriesKind::temperature, "Room (F)", {}}};
        const double ours = medianTime(m_runs, [&] {
            return timed([&] {
                if (!readLog(request))
                    std::fprintf(stderr, "the log can't be read\n");
            });
        });
        row("parse / sqlite3 .import", ours, peerTime("import.sql"), "<= 0.20");
    }

    void import()
    {
        double peak = 0.0;
        const double ours = medianTime(m_runs, [&] {
            fresh("log.holdband", "log.json");
            const Measured measured =
                runCommand({m_program, "import", in("log.holdband"), in("log.csv")});
            peak = std::max(peak, measured.peakMib);
            return measured.seconds;
        });
        m_import = ours;
        row("import, file to commit / .import + 3 INSERT SELECT", ours, peerTime("long.sql"),
            "<= 0.60");
        amount("peak memory of the import", peak, "MiB", "<= 200");
        amount("file size of a reading",
               static_cast<double>(fs::file_size(in("log.holdband"))) / (3.0 * m_rows), "bytes",
               "<= 25");
    }

    void importAgain() const
    {
        const double again = medianTime(m_runs, [&] {
            return runCommand({m_program, "import", in("log.holdband"), in("log.csv")}).seconds;
        });
        row("import again, all there / first import", again, m_import, "<= 1.2");
    }

    /// The batch's beer readings by plain sqlite3_step, summed.
    double plainRead() const
    {
        return timed([&] {
            sqlite3* database = nullptr;
            sqlite3_stmt* statement = nullptr;
            sqlite3_open_v2(in("log.holdband").c_str(), &database, SQLITE_OPEN_READONLY, nullptr);
            sqlite3_prepare_v2(database, "SELECT place, value FROM readings", -1, &statement,
                               nullptr);
            double sum = 0.0;
            while (sqlite3_step(statement) == SQLITE_ROW)
                sum += sqlite3_column_double(statement, 1) +
                       static_cast<double>(sqlite3_column_int64(statement, 0));
            if (sum == 0.0)
                std::fprintf(stderr, "nothing was read\n");
            sqlite3_finalize(statement);
            sqlite3_close(database);
        });
    }

    void openBatch() const
    {
        const double ours = medianTime(m_runs, [&] {
            return timed([&] {
                auto logbook = store::LogbookFile::open(in("log.holdband"), store::Access::read);
                if (!logbook || !results::reviewRun(**logbook, "Long"))
                    std::fprintf(stderr, "the batch can't be opened\n");
            });
        });
        row("open a batch with its three sensors / plain sqlite3_step", ours,
            medianTime(m_runs, [&] { return plainRead(); }), "<= 1.5");
    }

    /// Both as commands: program start, opening, and the result.
    void report() const
    {
        double peak = 0.0;
        const double ours = medianTime(m_runs, [&] {
            const Measured measured = runCommand({m_program, "report", in("log.holdband"), "Long",
                                                  "--out", in("long.pdf"), "--force"});
            peak = std::max(peak, measured.peakMib);
            return measured.seconds;
        });
        const double opening = medianTime(m_runs, [&] {
            return runCommand({m_program, "verdict", in("log.holdband"), "Long"}).seconds;
        });
        row("a PDF of the batch / opening it for its verdict", ours, opening, "<= 3");
        amount("peak memory of the PDF", peak, "MiB", "< 250");
        amount("size of the PDF", static_cast<double>(fs::file_size(in("long.pdf"))) / 1024.0,
               "KiB", "");
    }

    /// The same short batch in the big logbook and in one with nothing else.
    void verdict() const
    {
        writeLog(in("short.csv"), m_rows / 100);
        fresh("short.holdband", "small.json");
        runCommand({m_program, "import", in("short.holdband"), in("short.csv")});
        fresh("big.holdband", "small.json");
        runCommand({m_program, "import", in("big.holdband"), in("log.csv")});
        const auto time = [&](const char* logbook) {
            return medianTime(2 * m_runs + 1, [&] {
                return runCommand({m_program, "verdict", in(logbook), "Long"}).seconds;
            });
        };
        row("verdict in the big logbook / in its own small one", time("big.holdband"),
            time("short.holdband"), "<= 1.3");
    }

    void growth() const
    {
        writeLog(in("tenth.csv"), m_rows / 10);
        const double tenth = medianTime(m_runs, [&] {
            fresh("tenth.holdband", "small.json");
            return runCommand({m_program, "import", in("tenth.holdband"), in("tenth.csv")}).seconds;
        });
        row("import of all rows / of a tenth of them", m_import, tenth, "<= 11");
    }

    void window() const
    {
        if (!std::getenv("DISPLAY")) {
            std::printf("window shown: no display, not measured\n");
            return;
        }
        // From the start of the process until the display shows its window.
        const auto time = [&](const std::vector<std::string>& command) {
            const std::string line = "\"$@\" & until xdotool search --onlyvisible --pid $! "
                                     ">/dev/null 2>&1; do kill -0 $! || exit 1; done;"
                                     "kill -9 $!";
            std::vector<std::string> whole{"bash", "-c", line, "bash"};
            whole.insert(whole.end(), command.begin(), command.end());
            return medianTime(2 * m_runs + 1, [&] { return runCommand(whole).seconds; });
        };
        const double ours = time({m_program, in("sample.holdband")});
        row("window shown, sample open / a trivial window shown", ours, time({m_trivialWindow}),
            "<= 2.0");
    }

    /// With the long batch on its Run page: runs long enough to read and draw it, then is ended.
    void windowMemory() const
    {
        if (!std::getenv("DISPLAY"))
            return;
        const std::string seconds = std::to_string(6 + 3 * m_rows / 1'000'000);
        const double peak =
            runCommand({"bash", "-c", "\"$@\" & sleep " + seconds + "; kill $!; wait", "bash",
                        m_program, in("log.holdband")})
                .peakMib;
        amount("peak memory, window with the long batch open", peak, "MiB", "<= 220");
    }

    /// While the window previews and imports the log. Its program is in the folder of the trivial
    /// one.
    void stall() const
    {
        if (!std::getenv("DISPLAY"))
            return;
        fresh("stall.holdband", "log.json");
        const fs::path program = fs::path(m_trivialWindow).parent_path() / "import_stall";
        runCommand({program.string(), in("stall.holdband"), in("log.csv"), in("stall.txt")});
        double looking = 0.0, storing = 0.0;
        std::ifstream(in("stall.txt")) >> looking >> storing;
        amount("longest stall of the window's events, looking at the log", looking, "ms", "<= 50");
        amount("longest stall of the window's events, storing it", storing, "ms", "<= 50");
    }

    /// The panels of a run with as many readings as the log has rows.
    void drawing() const
    {
        const fs::path program = fs::path(m_trivialWindow).parent_path() / "draw_run";
        if (!fs::exists(program))
            return;
        runCommand({program.string(), std::to_string(m_rows), in("draw.txt")});
        struct Frame {
            double still = 0.0, moving = 0.0; // ms
        } small, one, three;
        std::ifstream result(in("draw.txt"));
        for (Frame* frame : {&small, &one, &three})
            result >> frame->still >> frame->moving;
        row("draw one series of all readings / of 2000", one.still / 1e3, small.still / 1e3,
            "<= 2.5");
        row("draw three series of all readings / one of 2000", three.still / 1e3, small.still / 1e3,
            "told beside it");
        amount("pan or zoom frame, three series of all readings, p95", three.moving, "ms",
               "<= 16.7");
        amount("pan or zoom frame, one series of 2000, p95", small.moving, "ms",
               "2.5 where the above holds");
    }

    void lanes() const
    {
        const LanesTimes times = lanesTimes(m_folder, m_runs);
        row("lanes of 300 batches, 5M readings: after a note / first", times.afterNote, times.first,
            "<= 0.10");
        row("the same, after more rows for one batch / first", times.afterRows, times.first,
            "<= 0.10");
        if (!std::getenv("DISPLAY"))
            return;
        const fs::path program = fs::path(m_trivialWindow).parent_path() / "paint_lanes";
        runCommand({program.string(), in("lanes.txt")});
        double whole = 0.0, year = 0.0;
        std::ifstream(in("lanes.txt")) >> whole >> year;
        amount("drawing the lanes of 500 batches over ten years", whole, "ms", "< 8");
        amount("the same, zoomed to one year", year, "ms", "< 8");
    }

    /// With ten times as many readings as the log has rows.
    void sideBySide() const
    {
        const SideBySideTimes times = sideBySideTimes(m_folder, 10 * m_rows, m_runs);
        row("two setups of 50 batches, 10M readings / their rows by sqlite3_step", times.first,
            times.plainRead, "<= 1.5");
        row("the same again after a weight was changed / first", times.again, times.first,
            "<= 0.10");
        row("the same after more rows for one batch / first", times.afterRows, times.first,
            "<= 0.10");
    }

    std::string m_program;
    std::string m_trivialWindow;
    fs::path m_folder;
    int m_rows;
    int m_runs;
    double m_import = 0.0;
};

} // namespace
} // namespace holdband::bench

int main(int argc, char** argv)
{
    if (argc < 4) {
        std::fprintf(stderr, "usage: bench HOLDBAND TRIVIAL_WINDOW FOLDER [ROWS [RUNS]]\n");
        return 2;
    }
    const int rows = argc > 4 ? std::atoi(argv[4]) : 1'000'000;
    const int runs = argc > 5 ? std::atoi(argv[5]) : 5;
    holdband::bench::Bench(argv[1], argv[2], argv[3], rows, runs).run();
    return 0;
}
