#include "ui/record/note_dialog.h"

#include "core/store/records/batches.h"
#include "core/store/records/equipment.h"
#include "core/store/records/journal.h"
#include "ui/forms/day_picker.h"
#include "ui/forms/typed_time.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

struct Choices {
    Zone zone;
    std::vector<Batch> batches; ///< in order of pitching
};

Result<Choices> readChoices(const store::LogbookFile& file)
{
    auto settings = store::readSettings(file);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(settings->zone);
    HOLDBAND_TRY(zone);
    auto batches = store::readBatches(file);
    HOLDBAND_TRY(batches);
    return Choices{*zone, std::move(*batches)};
}

Result<bool> saveNote(const store::LogbookFile& file, const JournalNote& note)
{
    store::HistoryEntry entry{store::HistoryVerb::noteAdded};
    if (note.batch)
        entry.arguments = {*note.batch};
    auto change = store::Change::begin(file, entry);
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(store::addNote(*change, note));
    HOLDBAND_TRY(change->commit());
    return true;
}

} // namespace

NoteDialog::NoteDialog(Session& session, const QString& batch, QWidget* parent,
                       std::optional<Instant> at)
    : QDialog(parent), m_session(&session), m_at(at), m_time(new QLineEdit(this)),
      m_batch(new QComboBox(this)), m_text(new QPlainTextEdit(this)),
      m_message(makeLabel({}, "warn", this))
{
    setWindowTitle(Words::tr("Journal note"));
    resize(520, 300);
    m_time->setAccessibleName(Words::tr("Time of the note"));
    new DayPicker(m_time);
    m_batch->setAccessibleName(Words::tr("Of which batch"));
    m_text->setAccessibleName(Words::tr("Note"));
    m_text->setPlaceholderText(Words::tr("lid opened, dry hops in, power cut …"));
    m_text->setTabChangesFocus(true);
    layOut();
    fetch(batch);
}

void NoteDialog::layOut()
{
    auto* form = new QFormLayout;
    form->addRow(Words::tr("&Time"), m_time);
    form->addRow(Words::tr("&Batch"), m_batch);
    form->addRow(Words::tr("&Note"), m_text);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    QPushButton* saveButton = buttons->addButton(Words::tr("&Save"), QDialogButtonBox::AcceptRole);
    setRole(saveButton, "main");
    connect(saveButton, &QPushButton::clicked, this, &NoteDialog::save);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form, 1);
    column->addWidget(m_message);
    column->addWidget(buttons);
    m_text->setFocus();
}

void NoteDialog::fetch(const QString& batch)
{
    m_session->ask<Choices>(this, readChoices, [this, batch](Result<Choices> choices) {
        if (!choices)
            return refuse(sentence(choices.error()), m_text);
        m_zone = choices->zone;
        m_time->setText(typedTime(m_at.value_or(m_session->now()), m_zone));
        m_batch->addItem(Words::tr("the whole logbook"));
        for (const Batch& each : choices->batches)
            m_batch->addItem(shown(each.name), shown(each.name));
        m_batch->setCurrentIndex(std::max(0, m_batch->findData(batch)));
    });
}

void NoteDialog::save()
{
    const auto at = readTypedTime(m_time->text(), m_zone, m_session->now());
    if (!at)
        return refuse(sentence(at.error()), m_time);
    JournalNote note;
    note.at = *at;
    const QString batch = m_batch->currentData().toString();
    if (!batch.isEmpty())
        note.batch = core(batch);
    note.text = core(m_text->toPlainText().trimmed());
    if (note.text.empty())
        return refuse(Words::tr("Type a reason first."), m_text);
    m_session->change<bool>(
        this, [note](const store::LogbookFile& file) { return saveNote(file, note); },
        [this](Result<bool> stored) {
            if (!stored)
                return refuse(sentence(stored.error()), m_text);
            accept();
            m_session->announceChange();
        });
}

/// Asks once, because the text is lost when the dialog closes.
void NoteDialog::reject()
{
    const bool written = !m_text->toPlainText().trimmed().isEmpty();
    if (written && !std::exchange(m_leaveAsked, true))
        return refuse(
            Words::tr("The note is not saved. Press Escape or Cancel again to discard it."),
            m_text);
    QDialog::reject();
}

QString NoteDialog::message() const
{
    return m_message->text();
}

void NoteDialog::refuse(const QString& words, QWidget* field)
{
    m_message->setText(words);
    field->setFocus();
}

} // namespace holdband::ui
