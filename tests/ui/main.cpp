// The main function of these tests: an application with widgets, without a display, in a fixed
// locale.
#include "ui/theme/theme.h"

#include <QApplication>
#include <QLocale>
#include <QTemporaryDir>
#include <QTest>
#include <QWidget>
#include <gtest/gtest.h>

namespace {

/// All tests share one application. Qt treats a key combination typed by a test as still held until
/// the next key, and a held Ctrl changes what a click selects.
class KeysLetGo : public ::testing::EmptyTestEventListener {
    void OnTestEnd(const ::testing::TestInfo&) override
    {
        QWidget nothing;
        QTest::keyRelease(&nothing, Qt::Key_Control, Qt::NoModifier);
    }
};

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // The tests must not change the preferences of the person who runs them.
    const QTemporaryDir folder;
    for (const char* home : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        qputenv(home, folder.path().toUtf8());
    QLocale::setDefault(QLocale::c());
    QApplication application(argc, argv);
    holdband::ui::dress(application, holdband::ui::Scheme::light);
    ::testing::InitGoogleTest(&argc, argv);
    ::testing::UnitTest::GetInstance()->listeners().Append(new KeysLetGo);
    return RUN_ALL_TESTS();
}
