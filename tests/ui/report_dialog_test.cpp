// Reports from the window: the dialog, the background work, the picture on the clipboard.
#include "ui/report/picture_preview.h"
#include "ui/report/report_dialog.h"

#include "tests/ui/dialog_test.h"
#include "ui/forms/save_row.h"
#include "ui/window/notice_bar.h"
#include "ui/window/pages.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class ReportDialogTest : public DialogTest {
protected:
    void SetUp() override
    {
        DialogTest::SetUp();
        ReportOffer offer{{"Pale 1", "Pale 2"}, {"Loop", "Cabinet"}, {"Pale 2"}};
        m_dialog = new ReportDialog(session, offer);
        m_dialog->show();
    }

    void TearDown() override
    {
        delete m_dialog;
        WindowTest::TearDown();
    }

    void chooseForm(const char* words)
    {
        m_dialog->formChoice()->setCurrentText(QString::fromUtf8(words));
    }

    void type(const QString& file)
    {
        m_dialog->file()->selectAll();
        QTest::keyClicks(m_dialog->file(), file);
    }

    void press() { m_dialog->foot()->saveButton()->click(); }
    bool ended()
    {
        return QTest::qWaitFor([this] { return !m_dialog || !m_dialog->job().running(); }, 20'000);
    }

    QPointer<ReportDialog> m_dialog;
};

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

TEST_F(ReportDialogTest, APictureIsPreviewedBeforeItIsWritten)
{
    const PicturePreview* preview = m_dialog->preview();
    EXPECT_FALSE(preview->isVisible()) << "a PDF has none";
    chooseForm("Picture (PNG)");
    ASSERT_TRUE(QTest::qWaitFor([&] { return preview->isReady(); }, 20'000));
    ASSERT_TRUE(preview->isVisible());
    const QImage light = preview->pixmap().toImage();
    EXPECT_GT(light.width(), light.height()) << "1920 × 1080";
    m_dialog->ground()->setCurrentIndex(1);
    const QImage dark = preview->pixmap().toImage();
    EXPECT_LT(dark.pixelColor(1, 1).lightness(), light.pixelColor(1, 1).lightness());
    m_dialog->size()->setCurrentIndex(1);
    EXPECT_LT(preview->pixmap().width(), preview->pixmap().height()) << "1080 × 1920";
    EXPECT_TRUE(QDir(m_folder.path()).entryList({"*.png"}).isEmpty()) << "nothing is written";
}

TEST_F(ReportDialogTest, OpensTheFileOnlyWhereThatIsTicked)
{
    QStringList opened;
    QObject::connect(m_dialog, &ReportDialog::openWanted,
                     [&](const QString& path) { opened << path; });
    chooseForm("Figures (CSV)");
    type(path("one.csv"));
    EXPECT_TRUE(m_dialog->openAfter()->isChecked());
    m_dialog->openAfter()->setChecked(false);
    press();
    ASSERT_TRUE(ended());
    EXPECT_TRUE(QFile::exists(path("one.csv")));
    EXPECT_TRUE(opened.isEmpty());
}

TEST_F(ReportDialogTest, BeginsWithWhatIsShown)
{
    EXPECT_EQ(m_dialog->of()->currentText(), "Pale 2");
    EXPECT_EQ(m_dialog->beside()->currentText(), "nothing");
    EXPECT_TRUE(m_dialog->file()->text().endsWith("/Pale 2.pdf"));
    EXPECT_FALSE(m_dialog->size()->isEnabled());
    chooseForm("Picture (PNG)");
    EXPECT_TRUE(m_dialog->size()->isEnabled());
    EXPECT_TRUE(m_dialog->file()->text().endsWith("/Pale 2.png"));
    m_dialog->beside()->setCurrentText("Pale 1");
    EXPECT_TRUE(m_dialog->file()->text().endsWith("/Pale 2 and Pale 1.png"));
}

TEST_F(ReportDialogTest, WritesInTheBackgroundAndReportsIt)
{
    QSignalSpy said(m_dialog, &ReportDialog::said);
    chooseForm("Figures (CSV)");
    type(path("out.csv"));
    press();
    ASSERT_TRUE(said.wait(20'000));
    EXPECT_TRUE(said[0][0].toString().contains("out.csv"));
    EXPECT_TRUE(contentOf(path("out.csv")).startsWith("id,part,of,figure"));
}

TEST_F(ReportDialogTest, ANameWithoutItsEndingGetsIt)
{
    QSignalSpy said(m_dialog, &ReportDialog::said);
    type(path("out"));
    press();
    ASSERT_TRUE(said.wait(20'000));
    EXPECT_TRUE(contentOf(path("out.pdf")).startsWith("%PDF"));
}

TEST_F(ReportDialogTest, AsksBeforeItReplacesAFile)
{
    write("out.csv", "mine");
    chooseForm("Figures (CSV)");
    type(path("out.csv"));
    press();
    EXPECT_FALSE(m_dialog->job().running());
    EXPECT_TRUE(m_dialog->foot()->words().contains("already exists"));
    EXPECT_EQ(contentOf(path("out.csv")), "mine");
    QSignalSpy said(m_dialog, &ReportDialog::said);
    press();
    ASSERT_TRUE(said.wait(20'000));
    EXPECT_TRUE(contentOf(path("out.csv")).startsWith("id,part,of,figure"));
}

TEST_F(ReportDialogTest, ReportsWhatCouldNotBeWrittenAndStays)
{
    type(path("none/out.pdf"));
    press();
    ASSERT_TRUE(ended());
    QCoreApplication::processEvents();
    ASSERT_TRUE(m_dialog);
    EXPECT_TRUE(m_dialog->isVisible());
    EXPECT_TRUE(m_dialog->foot()->words().contains("no such folder"));
    EXPECT_TRUE(m_dialog->foot()->saveButton()->isEnabled());
}

TEST_F(ReportDialogTest, CancelStopsTheWorkAndCloses)
{
    type(path("out.pdf"));
    press();
    m_dialog->foot()->cancelButton()->click();
    ASSERT_TRUE(ended());
    EXPECT_TRUE(QTest::qWaitFor([this] { return !m_dialog || !m_dialog->isVisible(); }, 5'000));
}

class ReportWindowTest : public WindowTest {};

TEST_F(ReportWindowTest, TheMenuOpensTheDialogAndCopiesThePicture)
{
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window.get(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    settle(*window);
    EXPECT_EQ(QApplication::clipboard()->image().size(), QSize(1920, 1080));
    QTest::keyClick(window.get(), Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    settle(*window);
    const auto* dialog = window->findChild<ReportDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->of()->currentText(), "Pale 1");
    EXPECT_EQ(dialog->of()->count(), 4);
}

} // namespace holdband::ui::test
