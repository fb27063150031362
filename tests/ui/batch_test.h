// The dialogs of batches over the logbook of DialogTest.
#pragma once

#include "core/store/records/batches.h"
#include "tests/ui/dialog_test.h"
#include "ui/forms/save_change.h"
#include "ui/forms/save_row.h"
#include "ui/plans/batch_dialog.h"
#include "ui/plans/new_batch_dialog.h"

#include <QPushButton>
#include <QTest>
#include <memory>
#include <string>

namespace holdband::ui::test {

class NewBatchTest : public DialogTest {
protected:
    std::unique_ptr<NewBatchDialog> openNew(const std::string& splitFrom = {})
    {
        auto dialog = std::make_unique<NewBatchDialog>(session, world(), splitFrom);
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
        dialog->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
        return dialog;
    }
    std::unique_ptr<BatchDialog> openEdit(const std::string& name)
    {
        const BatchFormData all = world();
        auto dialog = std::make_unique<BatchDialog>(session, all, *all.batch(name));
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
        return dialog;
    }
    void press(FormDialog& dialog)
    {
        dialog.foot()->saveButton()->click();
        settle();
    }
    void setPlan(const std::string& name, const Schedule& schedule)
    {
        Batch changed = batch(name);
        changed.schedule = schedule;
        saveChange(
            session, &session, {store::HistoryVerb::roundsChanged},
            [=](const store::Change& change) { return store::updateBatch(change, name, changed); },
            [](const Done& done) { EXPECT_TRUE(done); });
        settle();
    }
};

} // namespace holdband::ui::test
