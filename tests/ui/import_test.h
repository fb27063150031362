// The Imports page of a window with a small logbook, and what tests do there.
#pragma once

#include "core/store/logbook_file.h"
#include "core/store/readings/readings.h"
#include "tests/ui/sample_window.h"
#include "ui/imports/imports_page.h"
#include "ui/imports/log_view.h"
#include "ui/window/pages.h"

#include <QComboBox>
#include <QPushButton>
#include <memory>
#include <string>

namespace holdband::ui::test {

class ImportTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
    }

    ImportsPage& page() { return *m_window->pages()->imports(); }
    LogView& view() { return *page().view(); }
    void wait()
    {
        for (int i = 0; i < 4; ++i)
            settle(*m_window);
    }
    void look(const QString& name, const std::string& text)
    {
        write(name, text);
        m_window->importFile(path(name));
        wait();
    }
    std::unique_ptr<store::LogbookFile> file() const
    {
        return std::move(
            *store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now));
    }
    Instant lastOf(const char* sensor) const { return **store::lastReadingAt(*file(), sensor); }
    void choose(QComboBox* box, const QString& words)
    {
        const int index = box->findText(words);
        ASSERT_GE(index, 0) << words.toStdString();
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
        wait();
    }
    QString raw(int row, int column) { return view().raw()->index(row, column).data().toString(); }
    QString result(int row, int column)
    {
        return view().result()->index(row, column).data().toString();
    }
    QString count(RowOutcome outcome) { return view().countButton(outcome)->text(); }
    std::string said() { return page().message().toStdString(); }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

inline const std::string goodLog = "time,Cabinet beer (F),Lid\n"
                                   "2026-03-12T19:00:00Z,66.2,shut\n"
                                   "2026-03-12T19:30:00Z,66.4,shut\n"
                                   "2026-03-12T20:00:00Z,?,shut\n";

} // namespace holdband::ui::test
