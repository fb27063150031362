// A small made-up logbook in a folder of its own, and a window on it with a fixed clock:
// Thursday 12 March 2026, 18:12 in Denver. "Pale 1" (Loop) left its band once and is over;
// "Pale 2" (Cabinet) runs. The clocks changed on 8 March, while Pale 1 ran.
#pragma once

#include "ui/window/main_window.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <memory>

namespace holdband::ui::test {

class WindowTest : public ::testing::Test {
protected:
    void SetUp() override;
    /// Every act that the test brought about can be said in another language.
    void TearDown() override;

    QString path(const QString& name) const { return m_folder.filePath(name); }
    void write(const QString& name, const std::string& text) const;
    /// Loads the small logbook into `name`.
    QString makeLogbook(const QString& name = QStringLiteral("small.holdband")) const;
    /// A window on it, shown and settled.
    std::unique_ptr<MainWindow> openWindow(const QString& logbook);
    /// All that was asked is answered and shown.
    static void settle(MainWindow& window);
    /// The register readings of a meter in the file.
    static std::vector<double> kwhOf(const QString& logbook, const std::string& meter);

    static Instant now();

    QTemporaryDir m_folder;
};

} // namespace holdband::ui::test
