// make_sample OUT_FOLDER: writes the sample logbook's description and logs into an existing folder.
// The same bytes each time, on every machine.
#include "sample-data/maker/description.h"
#include "sample-data/maker/logs.h"
#include "sample-data/maker/rounds.h"
#include "sample-data/maker/summer.h"
#include "sample-data/maker/text.h"
#include "sample-data/maker/trace.h"

#include <cstdio>
#include <utility>

namespace {

using namespace holdband::sample;

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
        if (!writeFile(folder / name, bytes)) {
            std::fprintf(stderr, "make_sample: cannot write %s\n", (folder / name).c_str());
            return false;
        }
    }
    return true;
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::fprintf(stderr, "usage: make_sample OUT_FOLDER\n");
        return 2;
    }
    return writeAll(argv[1]) ? 0 : 3;
}
