// The other process of the tests here: `process_child ROLE FOLDER [SCRATCH]`. It reads orders from
// its standard input and answers each with a line.
//
//   write   opens the logbook for writing, as the window does, and answers "open" or the sentence;
//           then each order is the number of an act, answered once that is confirmed
//   take    the same, when a first line comes
//   new     the same with a new logbook
//   read    the first order is a kind of read, which it repeats until its input ends
#include "tests/faults/kill_acts.h"
#include "tests/faults/world.h"
#include "tests/processes/reads.h"

#include <QCoreApplication>
#include <atomic>
#include <iostream>
#include <thread>

namespace holdband::test {

namespace {

using store::LogbookFile;

void answer(const std::string& line)
{
    std::cout << line << std::endl;
}

int actOn(Result<std::unique_ptr<LogbookFile>> logbook, const std::string& folder)
{
    if (!logbook) {
        answer(logbook.error().sentence());
        return 3;
    }
    answer("open");
    for (std::string order; std::getline(std::cin, order);) {
        const Done done = faults::killAct(**logbook, folder, std::stoi(order));
        answer(done ? order : done.error().sentence());
    }
    return 0;
}

int write(const std::string& folder)
{
    return actOn(
        LogbookFile::open(faults::logbookIn(folder), store::Access::write, faults::clockOfTests),
        folder);
}

int makeNew(const std::string& folder)
{
    answer("ready");
    std::string go;
    std::getline(std::cin, go);
    return actOn(LogbookFile::create(faults::logbookIn(folder), {}, faults::clockOfTests), folder);
}

int takeAtOnce(const std::string& folder)
{
    answer("ready");
    std::string go;
    std::getline(std::cin, go);
    return write(folder);
}

int read(const std::string& folder, const std::string& scratch)
{
    std::string order;
    if (!std::getline(std::cin, order))
        return 0;
    std::atomic<bool> ended{false};
    std::thread waiting([&ended] {
        for (std::string more; std::getline(std::cin, more);)
            ;
        ended = true;
    });
    // Once more after the end, so that the last state is read too.
    for (bool last = false; !last;) {
        last = ended;
        answer(readOnce(order, folder, scratch));
    }
    waiting.join();
    return 0;
}

} // namespace

} // namespace holdband::test

int main(int argc, char** argv)
{
    using namespace holdband::test;
    const QCoreApplication application(argc, argv);
    if (argc < 3)
        return 2;
    const std::string role = argv[1];
    if (role == "write")
        return write(argv[2]);
    if (role == "take")
        return takeAtOnce(argv[2]);
    if (role == "new")
        return makeNew(argv[2]);
    return argc == 4 ? read(argv[2], argv[3]) : 2;
}
