// The process that kills_test kills: `kill_child FOLDER ACTS`. Prints the number of each act once
// it is confirmed.
#include "tests/faults/kill_acts.h"

#include <QCoreApplication>
#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3)
        return 2;
    for (int number = 0; number < std::atoi(argv[2]); ++number) {
        const holdband::Done done = holdband::faults::killAct(argv[1], number);
        if (!done) {
            std::fprintf(stderr, "%s\n", done.error().sentence().c_str());
            return 1;
        }
        std::printf("%d\n", number);
        std::fflush(stdout);
    }
    return 0;
}
