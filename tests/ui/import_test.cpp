// A log by the Imports page: looked at, then kept.
#include "tests/ui/sample_window.h"

#include "core/store/readings.h"
#include "ui/imports/import_choices.h"
#include "ui/imports/imports_page.h"
#include "ui/tables/table_card.h"
#include "ui/window/pages.h"

#include <QComboBox>
#include <QPushButton>
#include <QTest>

namespace holdband::ui::test {

namespace {

class ImportTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
    }

    ImportsPage& page() { return *m_window->pages()->imports(); }
    void look(const QString& name, const std::string& text)
    {
        write(name, text);
        m_window->importFile(path(name));
        settle(*m_window);
        settle(*m_window);
    }
    Instant lastOf(const char* sensor) const
    {
        const auto file =
            store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
        return **store::lastReadingAt(**file, sensor);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

const std::string goodLog = "time,Cabinet beer (F),Lid\n"
                            "2026-03-12T19:00:00Z,66.2,shut\n"
                            "2026-03-12T19:30:00Z,66.4,shut\n"
                            "2026-03-12T20:00:00Z,?,shut\n";

} // namespace

TEST_F(ImportTest, IsLookedAtFirstAndKeptOnAWord)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    EXPECT_EQ(m_window->pages()->page(), PageId::imports);
    ASSERT_TRUE(page().canKeep()) << page().message().toStdString();
    EXPECT_TRUE(page().message().contains("3 rows read, 2 readings new, 0 already there"))
        << page().message().toStdString();
    EXPECT_EQ(page().counts()->model()->index(0, 1).data(), "Cabinet beer");
    EXPECT_EQ(page().rejected()->model()->rowCount(), 1);
    EXPECT_EQ(page().rejected()->model()->index(0, 0).data(), "4");
    EXPECT_EQ(lastOf("Cabinet beer"), before);
    page().keepButton()->click();
    settle(*m_window);
    EXPECT_TRUE(page().message().startsWith("Kept.")) << page().message().toStdString();
    EXPECT_GT(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, ASecondTimeThereIsNothingNew)
{
    look("more.csv", goodLog);
    page().keepButton()->click();
    settle(*m_window);
    look("more.csv", goodLog);
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("nothing new to keep"));
}

TEST_F(ImportTest, CancelKeepsNothing)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().cancel();
    settle(*m_window);
    EXPECT_FALSE(page().canKeep());
    EXPECT_EQ(page().message(), "Nothing was kept.");
    EXPECT_EQ(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, AnOpenDateOrderIsAskedFor)
{
    look("open.csv", "time,Cabinet beer (F)\n03/04/2026 10:00,66.2\n03/05/2026 10:00,66.4\n");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("choose the order of the date"))
        << page().message().toStdString();
    QComboBox* order = page().choices()->dateOrder();
    order->setCurrentIndex(2); // month, day, year
    Q_EMIT order->activated(2);
    settle(*m_window);
    EXPECT_TRUE(page().canKeep()) << page().message().toStdString();
}

TEST_F(ImportTest, AColumnIsGivenItsMeaning)
{
    look("other.csv", "time,Probe 1 (F)\n2026-03-12T19:00:00Z,66.2\n2026-03-12T19:30:00Z,66.4\n");
    EXPECT_FALSE(page().canKeep());
    QComboBox* box = page().choices()->column("Probe 1 (F)");
    ASSERT_TRUE(box);
    const int index = box->findText("Cabinet beer");
    ASSERT_GT(index, 0);
    box->setCurrentIndex(index);
    Q_EMIT box->activated(index);
    settle(*m_window);
    ASSERT_TRUE(page().canKeep()) << page().message().toStdString();
    EXPECT_EQ(page().counts()->model()->index(0, 1).data(), "Cabinet beer");
}

TEST_F(ImportTest, AFileThatIsNoLogIsRefusedInASentence)
{
    look("empty.csv", "");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("empty")) << page().message().toStdString();
    m_window->importFile(path("missing.csv"));
    settle(*m_window);
    settle(*m_window);
    EXPECT_FALSE(page().message().isEmpty());
    EXPECT_FALSE(page().canKeep());
}

} // namespace holdband::ui::test
