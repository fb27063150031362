// The window's handling of a logbook's copies: the text in the status line, the offer if a logbook
// is damaged or gone.
#include "ui/window/main_window.h"

#include "core/preferences/preferences.h"
#include "core/store/records/equipment.h"
#include "core/store/safety/backups.h"
#include "core/store/safety/seal.h"
#include "ui/record/backups_dialog.h"
#include "ui/rounds/reminder.h"
#include "ui/window/notice_bar.h"
#include "ui/words/words.h"

#include <QFileInfo>

namespace holdband::ui {

void MainWindow::refreshBackups()
{
    using Last = std::optional<LocalTime>;
    m_session.ask<Last>(
        this,
        [](const store::LogbookFile& file) -> Result<Last> {
            const auto copies = store::listBackups(file.path(), core(preferences::backupPlace()));
            return copies.empty() ? Last() : Last(copies.front().taken);
        },
        [this](Result<Last> last) {
            m_lastBackup = last ? *last : std::nullopt;
            m_reminder->look();
        });
}

/// A logbook that opens may still have changed bits.
void MainWindow::checkSeal()
{
    m_session.ask<bool>(
        this, [](const store::LogbookFile& file) { return store::sealHolds(file.database()); },
        [this](Result<bool> holds) {
            if (!holds) // the file is busy, or the disk failed
                return m_notice->say(sentence(holds.error()));
            if (*holds)
                return;
            const QString name = QFileInfo(m_session.path()).fileName();
            const QString why = Words::tr("%1 is damaged, or another program wrote in it: it "
                                          "no longer fits its seal.")
                                    .arg(name);
            m_notice->say(why);
            offerBackups(m_session.path(), why);
        });
}

void MainWindow::showBackups()
{
    if (!m_session.isOpen())
        return;
    BackupsDialog* dialog = makeBackupsDialog(m_session.path(), {});
    dialog->look();
    dialog->show();
}

BackupsDialog* MainWindow::makeBackupsDialog(const QString& logbook, const QString& why)
{
    auto* dialog = new BackupsDialog(logbook, why, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &BackupsDialog::restored, this, [this](const QString& path) {
        m_session.openInBackground(path, [this, path](const Done& opened) {
            takeAnswer(path, opened);
            if (opened)
                m_notice->say(Words::tr("Restored as %1; the original logbook is unchanged.")
                                  .arg(QFileInfo(path).fileName()));
        });
    });
    connect(dialog, &BackupsDialog::copyWanted, dialog, [this, dialog] { backUpFor(*dialog); });
    connect(dialog, &QDialog::finished, this, &MainWindow::refreshBackups);
    return dialog;
}

void MainWindow::backUpFor(BackupsDialog& dialog)
{
    m_session.ask<store::BackupCopy>(
        &dialog,
        [](const store::LogbookFile& file) -> Result<store::BackupCopy> {
            auto settings = store::readSettings(file);
            HOLDBAND_TRY(settings);
            auto zone = Zone::named(settings->zone);
            HOLDBAND_TRY(zone);
            return store::makeBackup(file.database(), core(preferences::backupPlace()),
                                     zone->toLocal(file.now()));
        },
        [&dialog](Result<store::BackupCopy> made) {
            dialog.copyMade(made ? Done() : Done(failure(made.error())));
        });
}

/// Shown only if there is something to offer.
void MainWindow::offerBackups(const QString& logbook, const QString& why)
{
    BackupsDialog* dialog = makeBackupsDialog(logbook, why);
    connect(dialog, &BackupsDialog::looked, dialog, [dialog] {
        if (dialog->isVisible())
            return;
        if (dialog->logbookIsBroken() && !dialog->copies().empty())
            dialog->open();
        else
            dialog->deleteLater();
    });
    dialog->look();
}

} // namespace holdband::ui
