// Repeats every input of the given files and folders, in order of their names, without libFuzzer.
#include "tests/fuzz/fuzz_one.h"

#include <QCoreApplication>
#include <QStandardPaths>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

namespace {

namespace fs = std::filesystem;

std::vector<fs::path> inputsIn(int argc, char** argv)
{
    std::vector<fs::path> inputs;
    for (int i = 1; i < argc; ++i) {
        if (!fs::is_directory(argv[i])) {
            inputs.emplace_back(argv[i]);
            continue;
        }
        for (const fs::directory_entry& entry : fs::directory_iterator(argv[i]))
            inputs.push_back(entry.path());
    }
    std::sort(inputs.begin(), inputs.end());
    return inputs;
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    const std::vector<fs::path> inputs = inputsIn(argc, argv);
    if (inputs.empty()) {
        std::fprintf(stderr, "no inputs: name files or folders\n");
        return 2;
    }
    for (const fs::path& input : inputs) {
        std::ifstream file(input, std::ios::binary);
        const std::vector<char> text{std::istreambuf_iterator<char>(file), {}};
        if (!file.good() && !file.eof()) {
            std::fprintf(stderr, "%s can't be read\n", input.c_str());
            return 3;
        }
        std::printf("%s, %zu bytes\n", input.c_str(), text.size());
        std::fflush(stdout); // names the input if it crashes
        holdband::fuzz::fuzzOne({reinterpret_cast<const std::uint8_t*>(text.data()), text.size()});
    }
    std::printf("%zu inputs\n", inputs.size());
    return 0;
}
