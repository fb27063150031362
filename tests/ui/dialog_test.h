// The small logbook of sample_window.h in a session, for the tests of dialogs.
#pragma once

#include "tests/ui/sample_window.h"
#include "ui/plans/batch_form_data.h"

#include <QLineEdit>
#include <QTest>

namespace holdband::ui::test {

class DialogTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_clock = now();
        logbook = makeLogbook();
        const Done opened = session.open(logbook);
        ASSERT_TRUE(opened) << opened.error().sentence();
    }

    void settle()
    {
        QCoreApplication::processEvents();
        EXPECT_TRUE(QTest::qWaitFor([&] { return session.idle(); }, 20'000));
        QCoreApplication::processEvents();
    }

    BatchFormData world() const
    {
        const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::read);
        EXPECT_TRUE(file);
        const auto read = readFormData(**file);
        EXPECT_TRUE(read) << (read ? "" : read.error().sentence());
        return *read;
    }

    Batch batch(const std::string& name) const
    {
        const BatchFormData all = world();
        const Batch* found = all.batch(name);
        EXPECT_TRUE(found) << name;
        return found ? *found : Batch{};
    }

    Instant m_clock;
    Session session{[this] { return m_clock; }};
    QString logbook;
};

} // namespace holdband::ui::test
