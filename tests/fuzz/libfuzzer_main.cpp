// libFuzzer's entry points. libFuzzer brings its own main.
#include "tests/fuzz/fuzz_one.h"

#include <QCoreApplication>
#include <QStandardPaths>

extern "C" int LLVMFuzzerInitialize(int* argc, char*** argv)
{
    static QCoreApplication application(*argc, *argv);
    QStandardPaths::setTestModeEnabled(true);
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    holdband::fuzz::fuzzOne({data, size});
    return 0;
}
