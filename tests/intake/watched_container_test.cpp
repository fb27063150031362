// A watched file that is packed is read as a whole, each time that it has changed.
#include "core/intake/csv/preview.h"
#include "tests/intake/packing.h"
#include "tests/intake/watched_file.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

using testing::HasSubstr;

class WatchedContainer : public WatchedFile {};

TEST_F(WatchedContainer, aPackedLogIsReadAsAWholeWhenItHasChanged)
{
    const std::string one = "Time,Beer\n2026-11-10 08:00,20\n";
    const std::string two = one + "2026-11-10 09:00,21\n";
    using Pack = std::string (*)(const std::string&);
    for (const Pack pack : {Pack([](const std::string& text) { return gzipped(text); }),
                            Pack([](const std::string& text) {
                                return zipped({{"probe.csv", text}});
                            })}) {
        write(pack(one));
        const std::size_t before = readings();
        EXPECT_EQ(poll().added, before == 0 ? 1 : 0);
        EXPECT_EQ(poll().added, 0) << "nothing has changed";
        write(pack(two));
        const intake::WatchReport report = poll();
        EXPECT_EQ(report.added, before == 0 ? 1 : 0);
        EXPECT_TRUE(report.remarks.empty());
        EXPECT_EQ(readings(), 2u);
    }
}

TEST_F(WatchedContainer, aHalfWrittenOneIsAProblemUntilItIsComplete)
{
    const std::string whole = gzipped("Time,Beer\n2026-11-10 08:00,20\n");
    write(whole.substr(0, 30));
    const intake::WatchReport report = poll();
    ASSERT_EQ(report.problems.size(), 1u);
    EXPECT_THAT(report.problems.front(), HasSubstr("probe.csv, byte 30: "));
    EXPECT_EQ(readings(), 0u);
    write(whole);
    EXPECT_EQ(poll().added, 1);
}

TEST_F(WatchedContainer, aPlainLogMayBecomeAPackedOneAndBack)
{
    const std::string plain = "Time,Beer\n2026-11-10 08:00,20\n";
    write(plain);
    EXPECT_EQ(poll().added, 1);
    write(gzipped(plain + "2026-11-10 09:00,21\n"));
    EXPECT_EQ(poll().added, 1);
    write(plain + "2026-11-10 09:00,21\n2026-11-10 10:00,22\n");
    EXPECT_EQ(poll().added, 1);
    EXPECT_EQ(readings(), 3u);
}

TEST_F(WatchedContainer, thePreviewShowsTheRowsInside)
{
    write(gzipped("Time,Beer\n2026-11-10 08:00,20\n"));
    const auto preview = intake::previewLog(*m_logbook, {file()});
    ASSERT_TRUE(preview) << preview.error().sentence();
    EXPECT_EQ(preview->fileName, "probe.csv");
    ASSERT_EQ(preview->rows.size(), 2u);
    EXPECT_EQ(preview->rows[1].cells[1], "20");
    write(gzipped("Time,Beer\n").substr(0, 20));
    EXPECT_THAT(intake::previewLog(*m_logbook, {file()}).error().sentence(),
                HasSubstr("probe.csv, byte 20: "));
}

} // namespace
} // namespace holdband::test
