// A small invented logbook in its own folder, and a window on it with a fixed clock: Thursday 12
// March 2026, 18:12 in Denver. "Pale 1" (Loop) left its band once and has ended; "Pale 2" (Cabinet)
// is running. The clocks changed on 8 March, while Pale 1 ran.
#pragma once

#include "ui/window/main_window.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <memory>

namespace holdband::ui::test {

class WindowTest : public ::testing::Test {
protected:
    void SetUp() override;
    /// Checks that every history entry made by the test can be shown in another language.
    void TearDown() override;

    QString path(const QString& name) const { return m_folder.filePath(name); }
    void write(const QString& name, const std::string& text) const;
    /// Loads the small logbook into `name`.
    QString makeLogbook(const QString& name = QStringLiteral("small.holdband")) const;
    /// A window on it, shown and idle.
    std::unique_ptr<MainWindow> openWindow(const QString& logbook);
    /// Waits until all requests are answered and shown.
    static void settle(MainWindow& window);
    /// The register readings of a meter in the file.
    static std::vector<double> kwhOf(const QString& logbook, const std::string& meter);

    static Instant now();

    QTemporaryDir m_folder;
};

} // namespace holdband::ui::test
