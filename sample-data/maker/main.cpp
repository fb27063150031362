// make_sample OUT_FOLDER: writes the sample logbook's description and logs into an existing folder.
// make_sample --truth FILE: writes what ales in July would truly use on both setups.
// The same bytes each time, on every machine.
#include "sample-data/maker/description.h"
#include "sample-data/maker/logs.h"
#include "sample-data/maker/rounds.h"
#include "sample-data/maker/summer.h"
#include "sample-data/maker/text.h"
#include "sample-data/maker/trace.h"
#include "sample-data/maker/truth.h"

#include <cstdio>
#include <string_view>
#include <utility>

namespace {

using namespace holdband::sample;

bool write(const std::filesystem::path& path, const std::string& bytes)
{
    if (writeFile(path, bytes))
        return true;
    std::fprintf(stderr, "make_sample: cannot write %s\n", path.c_str());
    return false;
}

bool writeAll(const std::filesystem::path& folder)
{
    const Scenario scenario = springAndSummer();
    const Trace trace(scenario);
    const std::pair<const char*, std::string> files[] = {
        {"spring-trials.json", description(scenario, meterReadings(scenario, trace))},
        {"loop.csv", loopLog(scenario, trace)},
        {"cabinet.csv", cabinetLog(scenario, trace)},
        {"room.csv", roomLog(scenario, trace)},
    };
    for (const auto& [name, bytes] : files) {
        if (!write(folder / name, bytes))
            return false;
    }
    return true;
}

} // namespace

int main(int argc, char** argv)
{
    if (argc == 3 && std::string_view(argv[1]) == "--truth")
        return write(argv[2], truthTable()) ? 0 : 3;
    if (argc != 2) {
        std::fprintf(stderr, "usage: make_sample OUT_FOLDER | --truth FILE\n");
        return 2;
    }
    return writeAll(argv[1]) ? 0 : 3;
}
