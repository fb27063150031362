// A main of its own: an application with widgets, without a display, in a fixed locale.
#include "ui/theme/theme.h"

#include <QApplication>
#include <QLocale>
#include <QTemporaryDir>
#include <QTest>
#include <QWidget>
#include <gtest/gtest.h>

namespace {

/// All tests share one application. A key combination that a test typed is what Qt takes for held
/// until the next key, and a held Ctrl changes what a click chooses.
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
    const QTemporaryDir desk; // nothing is kept with the desk of who runs the tests
    for (const char* home : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        qputenv(home, desk.path().toUtf8());
    QLocale::setDefault(QLocale::c());
    QApplication application(argc, argv);
    holdband::ui::dress(application, holdband::ui::Scheme::light);
    ::testing::InitGoogleTest(&argc, argv);
    ::testing::UnitTest::GetInstance()->listeners().Append(new KeysLetGo);
    return RUN_ALL_TESTS();
}
