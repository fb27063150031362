#include "ui/record/journal_dialog.h"

#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/text/times.h"
#include "ui/forms/day_picker.h"
#include "ui/forms/save_change.h"
#include "ui/forms/typed_time.h"
#include "ui/session/session.h"
#include "ui/tables/list_table.h"
#include "ui/tables/table_model.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

QString allNotes()
{
    return Words::tr("all notes");
}

/// `batch` empty: reads all notes.
Result<JournalView> readView(const store::LogbookFile& file, const std::string& batch)
{
    JournalView view;
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    view.zone = *zone;
    auto batches = store::readBatches(file);
    HOLDBAND_TRY(batches);
    for (const Batch& each : *batches)
        view.batches.push_back(each.name);
    auto notes = store::readNotes(file);
    HOLDBAND_TRY(notes);
    for (store::StoredNote& note : *notes) {
        if (batch.empty() || note.note.batch == batch)
            view.notes.push_back(std::move(note));
    }
    return view;
}

TableText noteWords(const JournalView& view)
{
    TableText words;
    words.header = {Words::tr("when"), Words::tr("batch"), Words::tr("note")};
    words.numeric = {false, false, false};
    for (const store::StoredNote& stored : view.notes) {
        const QString text = shown(stored.note.text);
        words.rows.push_back({{shown(localText(stored.note.at, view.zone)), {}, false},
                              {stored.note.batch ? shown(*stored.note.batch) : dash, {}, false},
                              {text.simplified(), text, false}});
    }
    return words;
}

/// "2026-03-09 18:30"; in full, with its offset, if that is another instant.
QString exactTime(Instant at, const Zone& zone)
{
    const QString brief = typedTime(at, zone);
    const auto read = readTypedTime(brief, zone, std::nullopt);
    return read && *read == at
               ? brief
               : shown(localIso(at, zone)).replace(QLatin1Char('T'), QLatin1Char(' '));
}

/// The history entry for a change of the note.
store::HistoryEntry entryOf(store::HistoryVerb verb, const JournalNote& note)
{
    return {verb, note.batch ? std::vector{*note.batch} : std::vector<std::string>()};
}

} // namespace

void openJournal(QWidget* parent, Session& session, const QString& batch)
{
    if (!session.isOpen())
        return;
    auto* dialog = new JournalDialog(session, batch, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->show();
}

JournalDialog::JournalDialog(Session& session, const QString& batch, QWidget* parent)
    : QDialog(parent), m_session(&session), m_wanted(batch), m_notes(new TableModel(this)),
      m_batch(new QComboBox(this)), m_table(makeListTable(Words::tr("Notes"), m_notes, this)),
      m_time(new QLineEdit(this)), m_text(new QPlainTextEdit(this)),
      m_save(new QPushButton(Words::tr("&Save change"), this)),
      m_remove(new QPushButton(Words::tr("&Delete note"), this)),
      m_message(makeLabel({}, "muted", this))
{
    setWindowTitle(Words::tr("Journal"));
    resize(760, 560);
    m_batch->setAccessibleName(Words::tr("Notes of which batch"));
    m_time->setAccessibleName(Words::tr("Time of the note"));
    new DayPicker(m_time);
    m_text->setAccessibleName(Words::tr("Note"));
    m_text->setTabChangesFocus(true);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->installEventFilter(this);
    widen(*m_table, 2);
    layOut();
    connectParts();
    showNote(-1);
    refresh();
    m_table->setFocus();
}

void JournalDialog::layOut()
{
    auto* form = new QFormLayout;
    form->addRow(Words::tr("&Time"), m_time);
    form->addRow(Words::tr("&Note"), m_text);
    m_text->setFixedHeight(m_text->fontMetrics().lineSpacing() * 5);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->addButton(m_save, QDialogButtonBox::ActionRole);
    buttons->addButton(m_remove, QDialogButtonBox::ActionRole);
    for (QPushButton* button : {m_save, m_remove, buttons->button(QDialogButtonBox::Close)})
        button->setAutoDefault(false);
    setRole(m_save, "main");
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_batch);
    column->addWidget(m_table, 1);
    column->addLayout(form);
    column->addWidget(m_message);
    column->addWidget(buttons);
}

void JournalDialog::connectParts()
{
    connect(m_batch, &QComboBox::activated, this, [this] {
        m_wanted = m_batch->currentData().toString();
        refresh();
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& row) {
                rememberDraft();
                if (m_shown) // otherwise a new table is filled, and its message is not overwritten
                    m_message->clear();
                showNote(row.row());
            });
    connect(m_time, &QLineEdit::returnPressed, this, &JournalDialog::save);
    connect(m_save, &QPushButton::clicked, this, &JournalDialog::save);
    connect(m_remove, &QPushButton::clicked, this, &JournalDialog::remove);
    connect(m_session, &Session::changed, this, &JournalDialog::refresh);
}

bool JournalDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_table || event->type() != QEvent::KeyPress || !current())
        return QDialog::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Delete)
        remove();
    else if (key == Qt::Key_Return || key == Qt::Key_Enter)
        m_text->setFocus();
    else
        return QDialog::eventFilter(watched, event);
    return true;
}

void JournalDialog::refresh()
{
    m_session->ask<JournalView>(
        this,
        [batch = core(m_wanted)](const store::LogbookFile& file) { return readView(file, batch); },
        [this](Result<JournalView> view) {
            if (view)
                take(std::move(*view));
            else
                say(sentence(view.error()));
        });
}

void JournalDialog::take(JournalView view)
{
    rememberDraft();
    const auto before = std::exchange(m_shown, std::nullopt);
    const int oldRow = m_table->currentIndex().row();
    m_view = std::move(view);
    fillBatches();
    m_notes->setWords(noteWords(m_view));
    const auto count = static_cast<int>(m_view.notes.size());
    int row = std::min(std::max(oldRow, 0), count - 1);
    for (int i = 0; i < count; ++i) {
        if (before && m_view.notes[static_cast<std::size_t>(i)].id == *before)
            row = i;
    }
    if (row >= 0)
        m_table->selectRow(row); // selecting it shows it
    else
        showNote(row);
    if (count == 0)
        say(Words::tr("No notes yet. Ctrl+J in the window adds one."));
}

void JournalDialog::fillBatches()
{
    m_batch->clear();
    m_batch->addItem(allNotes(), QString());
    for (const std::string& batch : m_view.batches)
        m_batch->addItem(shown(batch), shown(batch));
    m_batch->setCurrentIndex(std::max(0, m_batch->findData(m_wanted)));
}

const store::StoredNote* JournalDialog::current() const
{
    for (const store::StoredNote& note : m_view.notes) {
        if (m_shown && note.id == *m_shown)
            return &note;
    }
    return nullptr;
}

JournalDialog::Draft JournalDialog::storedText(const store::StoredNote& note) const
{
    return {exactTime(note.note.at, m_view.zone), shown(note.note.text)};
}

void JournalDialog::rememberDraft()
{
    const store::StoredNote* note = current();
    if (!note)
        return;
    const Draft typed{m_time->text(), m_text->toPlainText()};
    if (typed == storedText(*note))
        m_drafts.erase(note->id.value);
    else
        m_drafts[note->id.value] = typed;
}

void JournalDialog::showNote(int row)
{
    const bool has = row >= 0 && row < static_cast<int>(m_view.notes.size());
    const bool mayChange = has && !m_session->readOnly();
    for (QWidget* widget : {static_cast<QWidget*>(m_save), static_cast<QWidget*>(m_remove)})
        widget->setEnabled(mayChange);
    m_time->setReadOnly(!mayChange);
    m_text->setReadOnly(!mayChange);
    m_shown.reset();
    Draft words;
    if (has) {
        const store::StoredNote& note = m_view.notes[static_cast<std::size_t>(row)];
        m_shown = note.id;
        const auto draft = m_drafts.find(note.id.value);
        words = draft == m_drafts.end() ? storedText(note) : draft->second;
    }
    m_time->setText(words.time);
    m_text->setPlainText(words.text);
}

void JournalDialog::save()
{
    const store::StoredNote* stored = current();
    if (!stored)
        return say(Words::tr("Choose a note in the table first."));
    const auto at = readTypedTime(m_time->text(), m_view.zone, m_session->now());
    if (!at) {
        m_time->setFocus();
        return say(sentence(at.error()));
    }
    JournalNote note = stored->note;
    note.at = *at;
    note.text = core(m_text->toPlainText().trimmed());
    if (note.text.empty()) {
        m_text->setFocus();
        return say(Words::tr("A note can't be empty; to remove it, choose Delete."));
    }
    const store::NoteId id = stored->id;
    if (note == stored->note)
        return say(Words::tr("Nothing was changed."));
    saveChange(
        *m_session, this, entryOf(store::HistoryVerb::noteChanged, note),
        [id, note](const store::Change& change) { return store::updateNote(change, id, note); },
        [this, id, note](Done done) {
            if (!done)
                return say(sentence(done.error()));
            takeSaved(id, note);
            say(Words::tr("Saved. Undo restores the old note."));
        });
}

void JournalDialog::takeSaved(store::NoteId id, const JournalNote& note)
{
    m_drafts.erase(id.value);
    for (store::StoredNote& each : m_view.notes) {
        if (each.id != id)
            continue;
        each.note = note;
        if (m_shown == id) {
            m_time->setText(storedText(each).time);
            m_text->setPlainText(storedText(each).text);
        }
    }
}

void JournalDialog::remove()
{
    const store::StoredNote* stored = current();
    if (!stored)
        return say(Words::tr("Choose a note in the table first."));
    const store::NoteId id = stored->id;
    saveChange(
        *m_session, this, entryOf(store::HistoryVerb::noteDeleted, stored->note),
        [id](const store::Change& change) { return store::removeNote(change, id); },
        [this, id](Done done) {
            if (!done)
                return say(sentence(done.error()));
            m_drafts.erase(id.value);
            if (m_shown == id)
                m_shown.reset();
            say(Words::tr("Removed. Undo brings it back."));
        });
}

QString JournalDialog::message() const
{
    return m_message->text();
}

void JournalDialog::say(const QString& words)
{
    m_message->setText(words);
    m_message->setAccessibleName(words);
}

} // namespace holdband::ui
