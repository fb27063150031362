// Opens a logbook where Qt finds no plugins, as on a system without the driver's package, and
// prints the sentence. Usage: without_driver FILE.
#include "core/store/logbook_file.h"

#include <QCoreApplication>
#include <cstdio>

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    QCoreApplication::setLibraryPaths({});
    const auto logbook = holdband::store::LogbookFile::create(argc > 1 ? argv[1] : "", {});
    std::puts(logbook ? "opened" : logbook.error().sentence().c_str());
    return logbook ? 1 : 0;
}
