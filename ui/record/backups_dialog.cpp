#include "ui/record/backups_dialog.h"

#include "core/preferences/preferences.h"
#include "ui/record/backup_text.h"
#include "ui/tables/list_table.h"
#include "ui/tables/table_model.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>

namespace holdband::ui {

namespace {

TableText copyText(const std::vector<store::BackupCopy>& copies)
{
    TableText words;
    words.header = {Words::tr("Copy of"), Words::tr("Size"), Words::tr("File")};
    words.numeric = {false, true, false};
    for (const store::BackupCopy& copy : copies)
        words.rows.push_back({{takenText(copy.taken), {}, false},
                              {sizeText(copy.bytes), {}, false},
                              {QFileInfo(shown(copy.path)).fileName(), shown(copy.path), false}});
    return words;
}

} // namespace

BackupsDialog::BackupsDialog(const QString& logbook, const QString& why, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_model(new TableModel(this)),
      m_table(makeListTable(Words::tr("Sound copies, the newest first"), m_model, this)),
      m_said(makeLabel({}, "muted", this)), m_place(makeLabel({}, "muted", this)),
      m_restore(new QPushButton(Words::tr("&Restore beside the logbook"), this)),
      m_copy(new QPushButton(Words::tr("Back up &now"), this)),
      m_beside(new QPushButton(Words::tr("Store copies &beside each logbook"), this))
{
    setWindowTitle(Words::tr("Copies of %1").arg(QFileInfo(logbook).fileName()));
    resize(680, 460);
    m_model->setWords(copyText({}));
    widen(*m_table, 2);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    setRole(m_restore, "main");
    layOut(why);
    showPlace();
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& row) { m_restore->setEnabled(row.isValid()); });
    connect(m_restore, &QPushButton::clicked, this, &BackupsDialog::restore);
    connect(m_beside, &QPushButton::clicked, this, [this] { setPlace({}); });
    m_copy->setVisible(why.isEmpty()); // a damaged logbook is not copied
    connect(m_copy, &QPushButton::clicked, this, [this] {
        m_copy->setEnabled(false);
        Q_EMIT copyWanted();
    });
    connect(&m_looking, &QFutureWatcherBase::finished, this, [this] { take(*m_looking.result()); });
    connect(&m_restoring, &QFutureWatcherBase::finished, this, [this] {
        const Result<std::string> made = *m_restoring.result();
        if (!made)
            return say(sentence(made.error()));
        accept();
        Q_EMIT restored(shown(*made));
    });
}

BackupsDialog::~BackupsDialog()
{
    m_looking.disconnect(this);
    m_restoring.disconnect(this);
}

void BackupsDialog::layOut(const QString& why)
{
    auto* elsewhere = new QPushButton(Words::tr("Store copies in a &folder…"), this);
    connect(elsewhere, &QPushButton::clicked, this, &BackupsDialog::choosePlace);
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* places = new QHBoxLayout;
    places->addWidget(elsewhere);
    places->addWidget(m_beside);
    places->addStretch();
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_restore);
    foot->addWidget(m_copy);
    foot->addWidget(close, 1);
    auto* column = new QVBoxLayout(this);
    if (!why.isEmpty())
        column->addWidget(makeLabel(why, "warn", this));
    column->addWidget(makeLabel(
        Words::tr("A copy is made before the first change of each day; copies of the last seven "
                  "days and eight weeks are retained. Restoring writes a copy beside the logbook "
                  "under another name and opens it; the logbook itself is unchanged."),
        "muted", this));
    column->addWidget(m_table, 1);
    column->addWidget(m_said);
    column->addWidget(m_place);
    column->addLayout(places);
    column->addLayout(foot);
}

void BackupsDialog::copyMade(const Done& made)
{
    m_copy->setEnabled(true);
    if (!made)
        return say(sentence(made.error()));
    look();
}

void BackupsDialog::look()
{
    m_restore->setEnabled(false);
    say(Words::tr("Looking at the copies …"));
    m_looking.setFuture(
        QtConcurrent::run([logbook = core(m_logbook), place = core(preferences::backupPlace())] {
            auto found = std::make_shared<Found>();
            found->broken = store::needsBackup(logbook);
            found->copies = store::soundBackups(logbook, place);
            return found;
        }));
}

void BackupsDialog::take(const Found& found)
{
    m_broken = found.broken;
    m_copies = found.copies;
    m_model->setWords(copyText(m_copies));
    say(m_copies.empty() ? Words::tr("There is no sound copy of this logbook.") : QString());
    if (!m_copies.empty())
        m_table->selectRow(0);
    Q_EMIT looked();
}

void BackupsDialog::restore()
{
    const int row = m_table->currentIndex().row();
    if (row < 0 || row >= static_cast<int>(m_copies.size()) || m_restoring.isRunning())
        return;
    say(Words::tr("Copying …"));
    m_restoring.setFuture(QtConcurrent::run(
        [logbook = core(m_logbook), copy = m_copies[static_cast<std::size_t>(row)]] {
            return std::make_shared<Result<std::string>>(store::restoreBeside(logbook, copy));
        }));
}

void BackupsDialog::choosePlace()
{
    const QString folder = QFileDialog::getExistingDirectory(
        this, Words::tr("Where the copies of all logbooks go"), preferences::backupPlace());
    if (!folder.isEmpty())
        setPlace(folder);
}

void BackupsDialog::setPlace(const QString& folder)
{
    if (!folder.isEmpty() && !QFileInfo(folder).isWritable())
        return say(Words::tr("%1 can't be written: choose another folder.").arg(folder));
    preferences::storeBackupPlace(folder);
    showPlace();
    look();
}

void BackupsDialog::showPlace()
{
    const QString place = preferences::backupPlace();
    m_place->setText(Words::tr("Copies of this logbook go to %1.")
                         .arg(shown(store::backupFolder(core(m_logbook), core(place)))));
    m_beside->setEnabled(!place.isEmpty());
}

QString BackupsDialog::placeSentence() const
{
    return m_place->text();
}

void BackupsDialog::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

} // namespace holdband::ui
