// A dry run counts what the import would add, and writes nothing; and cancelling at the last
// moment.
#include "core/intake/log/import.h"
#include "core/store/history/history.h"
#include "core/store/readings/imports.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <fstream>
#include <gmock/gmock.h>
#include <sstream>

namespace holdband::test {
namespace {

using intake::ImportReport;

class DryRun : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = create();
        addEquipment(*m_logbook);
    }

    intake::ImportOptions options(const std::string& text) const
    {
        std::ofstream(path("w.csv"), std::ios::binary) << text;
        intake::ImportOptions options;
        options.path = path("w.csv");
        return options;
    }
    Result<ImportReport> import(const std::string& text) const
    {
        return intake::importLog(*m_logbook, options(text));
    }
    std::string bytes() const
    {
        std::ifstream file(path(), std::ios::binary);
        std::ostringstream all;
        all << file.rdbuf();
        return all.str();
    }
    std::size_t entries() const { return store::readHistoryEntryIds(*m_logbook)->size(); }
    std::size_t readings() const
    {
        return store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)})
            ->at.size();
    }
    void undoLastChange() const
    {
        auto change = store::Change::begin(*m_logbook, saying("take back"));
        ASSERT_TRUE(change);
        ASSERT_TRUE(store::withdraw(*change, store::listImports(*m_logbook)->front().id));
        ASSERT_TRUE(change->commit());
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

std::string listOf(const std::vector<intake::ReportedRow>& rows)
{
    std::string text;
    for (const intake::ReportedRow& row : rows)
        text += std::to_string(row.line) + "/" + std::to_string(row.column) + "/" +
                std::to_string(toMs(row.at)) + "/" + std::to_string(row.value) + "/" +
                (row.stored ? std::to_string(*row.stored) : "-") + " ";
    return text;
}

/// All facts about the readings in a report.
std::string factsOf(const Result<ImportReport>& report)
{
    if (!report)
        return report.error().sentence();
    std::string text;
    for (const intake::ImportedColumn& column : report->columns)
        text += column.name + " " + std::to_string(column.added) + " " +
                std::to_string(column.alreadyThere) + " " + std::to_string(column.conflicting) +
                "\n";
    text += "new " + listOf(report->rows.added) + "\nthere " + listOf(report->rows.alreadyThere) +
            "\nconflicting " + listOf(report->rows.conflicting) + "\nrepeated ";
    for (const auto& [line, column] : report->rows.repeated)
        text += std::to_string(line) + "/" + std::to_string(column) + " ";
    for (const std::string& conflict : report->conflicts)
        text += "\n" + conflict;
    return text + "\nfirst rows " + std::to_string(report->firstRows.size()) + ", rejected " +
           std::to_string(report->file.rejectedTotal);
}

const std::vector<std::string> logs{
    "Time,Beer,Meter\n2026-03-07 06:00,20,5.0\n2026-03-07 07:00,21,5.5\n",
    // the same row twice, a second value for an instant, and a value that can't be read
    "Time,Beer,Meter\n2026-03-07 07:00,21,5.5\n2026-03-07 08:00,22,6.0\n"
    "2026-03-07 08:00,22,6.0\n2026-03-07 08:00,23,6.1\n2026-03-07 09:00,warm,6.2\n",
    // other values than the stored ones
    "Time,Beer,Meter\n2026-03-07 06:00,19,4.0\n2026-03-07 07:00,21,5.4\n"
    "2026-03-07 10:00,24,7.0\n",
    "Time,Name,Value\n2026-03-07 06:00,Beer,20\n2026-03-07 11:00,Beer,25\n"
    "2026-03-07 11:00,Meter,7.5\n2026-03-07 12:00,Meter,7.5\n",
    // a register that falls: refused
    "Time,Meter\n2026-03-07 13:00,8\n2026-03-07 14:00,1\n",
};

TEST_F(DryRun, countsWhatTheImportThenStores)
{
    for (const bool withdrawn : {false, true}) {
        for (const std::string& log : logs) {
            intake::ImportOptions each = options(log);
            if (log.find("Name") != std::string::npos)
                each.longColumns = intake::LongColumns{"Name", "Value"};
            each.dryRun = true;
            const auto dry = intake::importLog(*m_logbook, each);
            each.dryRun = false;
            const auto real = intake::importLog(*m_logbook, each);
            EXPECT_EQ(factsOf(dry), factsOf(real)) << log;
            EXPECT_FALSE(dry && dry->import);
            if (withdrawn && real && real->import)
                undoLastChange();
        }
        if (!withdrawn) { // the same again, although it was imported and withdrawn before
            const auto imports = store::listImports(*m_logbook);
            auto change = store::Change::begin(*m_logbook, saying("take back"));
            ASSERT_TRUE(change);
            for (const store::ImportLine& line : *imports)
                ASSERT_TRUE(store::withdraw(*change, line.id));
            ASSERT_TRUE(change->commit());
            EXPECT_EQ(readings(), 0u);
        }
    }
}

TEST_F(DryRun, needsOnlyReadAccessAndChangesNothing)
{
    ASSERT_TRUE(import(logs[0]));
    m_logbook.reset();
    const std::string before = bytes();
    const auto reader = store::LogbookFile::open(path(), store::Access::read);
    ASSERT_TRUE(reader);
    intake::ImportOptions each = options(logs[1]);
    each.dryRun = true;
    const auto report = intake::importLog(**reader, each);
    ASSERT_TRUE(report) << report.error().sentence();
    EXPECT_EQ(report->added(), 3);
    EXPECT_EQ(report->alreadyThere(), 4);
    EXPECT_EQ(report->conflicting(), 2);
    EXPECT_TRUE(bytes() == before);
}

TEST_F(DryRun, cancelledByTheLastCallOfProgressNothingIsStored)
{
    // The user presses Cancel during the last progress call: the next call must notice it.
    bool cancelled = false;
    const std::size_t before = entries();
    const auto report = intake::importLog(*m_logbook, options(logs[0]), [&](double share) {
        const bool goOn = !cancelled;
        cancelled = cancelled || share >= 1.0;
        return goOn;
    });
    EXPECT_FALSE(report);
    EXPECT_EQ(readings(), 0u);
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(store::listImports(*m_logbook)->empty());
}

TEST_F(DryRun, otherBytesThanThePreviewedOnesAreNotStored)
{
    intake::ImportOptions each = options(logs[0]);
    each.dryRun = true;
    const auto looked = intake::importLog(*m_logbook, each);
    ASSERT_TRUE(looked);
    for (const std::string& changed : {logs[1], std::string(), std::string("no log\n")}) {
        each = options(changed);
        each.lookedAt = looked->file.sha256;
        const auto report = intake::importLog(*m_logbook, each);
        ASSERT_TRUE(report) << report.error().sentence();
        EXPECT_TRUE(report->fileChanged);
        EXPECT_EQ(readings(), 0u);
    }
    each = options(logs[0]);
    each.lookedAt = looked->file.sha256;
    const auto report = intake::importLog(*m_logbook, each);
    ASSERT_TRUE(report);
    EXPECT_FALSE(report->fileChanged);
    EXPECT_EQ(readings(), 2u);
}

} // namespace
} // namespace holdband::test
