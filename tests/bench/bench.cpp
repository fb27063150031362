// Speed, memory and growth, compared with a peer in the same run: medians, as ratios. A benchmark,
// never a test. Usage: bench HOLDBAND TRIVIAL_WINDOW FOLDER [ROWS [RUNS]]
#include "core/intake/log/log_reader.h"
#include "core/results/run/run_review.h"
#include "tests/bench/child.h"
#include "tests/bench/lanes.h"
#include "tests/bench/log_data.h"
#include "tests/bench/peers.h"
#include "tests/bench/round_sheet.h"
#include "tests/bench/side_by_side.h"
#include "tests/bench/table.h"

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace holdband::bench {
namespace {

namespace fs = std::filesystem;

/// A median that was made elsewhere.
Times once(double seconds)
{
    return {seconds, seconds, seconds};
}

class Bench {
public:
    Bench(std::string program, std::string trivialWindow, fs::path folder, int rows, int runs)
        : m_program(std::move(program)), m_trivialWindow(std::move(trivialWindow)),
          m_folder(std::move(folder)), m_rows(rows), m_runs(runs), m_peers(m_folder, runs)
    {
    }

    void run()
    {
        makeData();
        printHeading();
        parse();
        import();
        importAgain();
        importGrown();
        longVerdict();
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
    }

    void fresh(const char* logbook, const char* description) const
    {
        fs::remove(in(logbook));
        runCommand({m_program, "load", in(logbook), in(description)});
    }

    void parse() const
    {
        LogRequest request;
        request.path = in("log.csv");
        request.wanted = {{"Vessel", SeriesKind::temperature, "Vessel (F)", {}},
                          {"Air", SeriesKind::temperature, "Air (F)", {}},
                          {"Room", SeriesKind::temperature, "Room (F)", {}}};
        const Times ours = measured(m_runs, [&] {
            return timed([&] {
                if (!readLog(request))
                    std::fprintf(stderr, "the log can't be read\n");
            });
        });
        row("parse / sqlite3 .import", ours, m_peers.sqliteParse(), "<= 0.20");
    }

    void import()
    {
        double peak = 0.0;
        const Times ours = measured(m_runs, [&] {
            fresh("log.holdband", "log.json");
            const Measured run =
                runCommand({m_program, "import", in("log.holdband"), in("log.csv")});
            peak = std::max(peak, run.peakMib);
            return run.seconds;
        });
        m_import = ours;
        row("import, file to commit / sqlite3 .import + 3 INSERT SELECT", ours,
            m_peers.sqliteImport(), "<= 0.45");
        row("the same / DuckDB, read_csv + unpivot into a file", ours, m_peers.duckdbImport(),
            "<= 0.80");
        amount("peak memory of the import", peak, "MiB", "<= 200");
        amount("file size of a reading",
               static_cast<double>(fs::file_size(in("log.holdband"))) / (3.0 * m_rows), "bytes",
               "<= 25");
    }

    void importAgain() const
    {
        const Times again = measured(m_runs, [&] {
            return runCommand({m_program, "import", in("log.holdband"), in("log.csv")}).seconds;
        });
        row("import again, all there / first import", again, m_import, "<= 0.30");
    }

    void importGrown() const
    {
        writeLog(in("grown.csv"), m_rows + m_rows / 100);
        const Times grown = measured(m_runs, [&] {
            fresh("grown.holdband", "log.json");
            runCommand({m_program, "import", in("grown.holdband"), in("log.csv")});
            return runCommand({m_program, "import", in("grown.holdband"), in("grown.csv")}).seconds;
        });
        row("import after it grew by 1 % / first import", grown, m_import, "");
    }

    /// The question that the verdict answers, and much less.
    void longVerdict() const
    {
        double peak = 0.0;
        const Times ours = measured(m_runs, [&] {
            const Measured run = runCommand({m_program, "verdict", in("log.holdband"), "Long"});
            peak = std::max(peak, run.peakMib);
            return run.seconds;
        });
        row("verdict of all rows / the question in SQL, sqlite3", ours, m_peers.sqliteVerdict(),
            "<= 0.35");
        row("the same / DuckDB's query alone, its data in memory", ours, m_peers.duckdbVerdict(),
            "<= 1.00");
        amount("peak memory of the verdict", peak, "MiB", "<= 250 with 10M rows");
    }

    void openBatch() const
    {
        const Times ours = measured(m_runs, [&] {
            return timed([&] {
                auto logbook = store::LogbookFile::open(in("log.holdband"), store::Access::read);
                if (!logbook || !results::reviewRun(**logbook, "Long"))
                    std::fprintf(stderr, "the batch can't be opened\n");
            });
        });
        row("open a batch with its three sensors / plain sqlite3_step", ours, m_peers.sqliteStep(),
            "<= 1.5");
    }

    /// Both as commands: program start, opening, and the result.
    void report() const
    {
        double peak = 0.0;
        const Times ours = measured(m_runs, [&] {
            const Measured run = runCommand({m_program, "report", in("log.holdband"), "Long",
                                             "--out", in("long.pdf"), "--force"});
            peak = std::max(peak, run.peakMib);
            return run.seconds;
        });
        const Times opening = measured(m_runs, [&] {
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
            return measured(2 * m_runs + 1, [&] {
                return runCommand({m_program, "verdict", in(logbook), "Long"}).seconds;
            });
        };
        row("verdict in the big logbook / in its own small one", time("big.holdband"),
            time("short.holdband"), "<= 1.3");
    }

    void growth() const
    {
        writeLog(in("tenth.csv"), m_rows / 10);
        const Times tenth = measured(m_runs, [&] {
            fresh("tenth.holdband", "small.json");
            return runCommand({m_program, "import", in("tenth.holdband"), in("tenth.csv")}).seconds;
        });
        row("import of all rows / of a tenth of them", m_import, tenth, "<= 10.5");
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
            return measured(2 * m_runs + 1, [&] { return runCommand(whole).seconds; });
        };
        const Times ours = time({m_program, in("sample.holdband")});
        row("window shown, sample open / a trivial window shown", ours, time({m_trivialWindow}),
            "<= 1.6");
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
        row("draw one series of all readings / of 2000", once(one.still / 1e3),
            once(small.still / 1e3), "<= 2.5");
        row("draw three series of all readings / one of 2000", once(three.still / 1e3),
            once(small.still / 1e3), "told beside it");
        amount("pan or zoom frame, three series of all readings, p95", three.moving, "ms",
               "<= 16.7");
        amount("pan or zoom frame, one series of 2000, p95", small.moving, "ms",
               "2.5 where the above holds");
    }

    void lanes() const
    {
        const LanesTimes times = lanesTimes(m_folder, m_runs);
        row("lanes of 300 batches, 5M readings: after a note / first", once(times.afterNote),
            once(times.first), "<= 0.10");
        row("the same, after more rows for one batch / first", once(times.afterRows),
            once(times.first), "<= 0.10");
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
        row("two setups of 50 batches, 10M readings / their rows by sqlite3_step",
            once(times.first), once(times.plainRead), "<= 1.5");
        row("the same again after a weight was changed / first", once(times.again),
            once(times.first), "<= 0.10");
        row("the same after more rows for one batch / first", once(times.afterRows),
            once(times.first), "<= 0.10");
    }

    std::string m_program;
    std::string m_trivialWindow;
    fs::path m_folder;
    int m_rows;
    int m_runs;
    Times m_import;
    Peers m_peers;
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
