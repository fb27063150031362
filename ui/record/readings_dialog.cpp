#include "ui/record/readings_dialog.h"

#include "ui/forms/day_picker.h"
#include "ui/forms/typed_time.h"
#include "ui/record/readings_text.h"
#include "ui/session/session.h"
#include "ui/tables/list_table.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace holdband::ui {

ReadingsDialog::ReadingsDialog(Session& session, QWidget* parent, ReadingSubject first,
                               std::optional<Span> marked)
    : QDialog(parent), m_session(&session), m_first(std::move(first)), m_marked(marked),
      m_readings(new TableModel(this)), m_subject(new QComboBox(this)), m_from(new QLineEdit(this)),
      m_to(new QLineEdit(this)), m_table(makeListTable(Words::tr("Readings"), m_readings, this)),
      m_value(new QLineEdit(this)), m_why(new QLineEdit(this)),
      m_leaveOut(new QPushButton(Words::tr("&Leave the chosen ones out"), this)),
      m_restore(new QPushButton(Words::tr("&Restore"), this)),
      m_correct(new QPushButton(Words::tr("&Correct the chosen one"), this)),
      m_message(makeLabel({}, "muted", this))
{
    setWindowTitle(Words::tr("Readings"));
    resize(900, 640);
    m_subject->setAccessibleName(Words::tr("Sensor or meter"));
    m_from->setAccessibleName(Words::tr("From"));
    m_to->setAccessibleName(Words::tr("To"));
    new DayPicker(m_from);
    new DayPicker(m_to);
    m_value->setAccessibleName(Words::tr("The right value"));
    m_value->setPlaceholderText(Words::tr("right value"));
    m_value->setMaximumWidth(130);
    m_why->setAccessibleName(Words::tr("Why"));
    m_why->setPlaceholderText(Words::tr("why: probe lifted, battery low …"));
    widen(*m_table, 5);
    layOut();
    connectParts();
    refresh();
}

void ReadingsDialog::layOut()
{
    auto* head = new QHBoxLayout;
    head->addWidget(m_subject, 2);
    head->addWidget(new QLabel(Words::tr("from"), this));
    head->addWidget(m_from, 1);
    head->addWidget(new QLabel(Words::tr("to"), this));
    head->addWidget(m_to, 1);
    auto* editing = new QHBoxLayout;
    editing->addWidget(m_value);
    editing->addWidget(m_why, 1);
    for (QPushButton* button : {m_correct, m_leaveOut, m_restore}) {
        button->setAutoDefault(false);
        button->setEnabled(!m_session->readOnly());
        editing->addWidget(button);
    }
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    close->button(QDialogButtonBox::Close)->setAutoDefault(false);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addLayout(editing);
    column->addWidget(m_message);
    column->addWidget(close);
}

void ReadingsDialog::connectParts()
{
    connect(m_subject, &QComboBox::activated, this, [this] {
        m_markedShown = false;
        if (!m_marked) { // else the last readings of another sensor or meter
            m_from->clear();
            m_to->clear();
        }
        refresh();
    });
    connect(m_from, &QLineEdit::returnPressed, this, &ReadingsDialog::refresh);
    connect(m_to, &QLineEdit::returnPressed, this, &ReadingsDialog::refresh);
    connect(m_leaveOut, &QPushButton::clicked, this, &ReadingsDialog::askToLeaveOut);
    connect(m_restore, &QPushButton::clicked, this,
            [this] { save(restore(m_view, chosenRows())); });
    connect(m_correct, &QPushButton::clicked, this, &ReadingsDialog::askToCorrect);
    connect(m_session, &Session::changed, this, &ReadingsDialog::refresh);
}

std::optional<Span> ReadingsDialog::typedSpan()
{
    const auto from = readTypedTime(m_from->text(), m_view.zone, m_session->now());
    const auto to = readTypedTime(m_to->text(), m_view.zone, m_session->now());
    if (!from || !to || *to < *from) {
        say(!from ? sentence(from.error())
                  : (!to ? sentence(to.error()) : Words::tr("The stretch ends before it begins.")));
        (from ? m_to : m_from)->setFocus();
        return std::nullopt;
    }
    return Span{*from, *to};
}

void ReadingsDialog::refresh()
{
    std::optional<Span> span = m_marked;
    if (!m_from->text().isEmpty() || !m_to->text().isEmpty()) {
        span = typedSpan();
        if (!span)
            return;
    }
    m_session->ask<ReadingsView>(
        this,
        [wanted = chosenSubject(), span](const store::LogbookFile& file) {
            return readReadingsView(file, wanted, span);
        },
        [this](Result<ReadingsView> view) {
            if (view)
                take(std::move(*view));
            else
                say(sentence(view.error()));
        });
}

void ReadingsDialog::take(ReadingsView view)
{
    m_view = std::move(view);
    fillSubjects();
    m_why->setPlaceholderText(m_view.subject.meter
                                  ? Words::tr("why: digits swapped, other meter read …")
                                  : Words::tr("why: probe lifted, battery low …"));
    m_from->setText(typedTime(m_view.span.start, m_view.zone, TimeDetail::second));
    m_to->setText(typedTime(m_view.span.end + std::chrono::milliseconds{999}, m_view.zone,
                            TimeDetail::second));
    m_readings->setWords(readingWords(m_view));
    say(countWords(m_view));
    if (m_marked && !std::exchange(m_markedShown, true))
        chooseMarked();
}

/// Only the reason is missing then.
void ReadingsDialog::chooseMarked()
{
    m_table->selectAll();
    m_why->setFocus();
}

/// Whether all rows of the marked span are chosen: then those that are not listed, because there
/// are too many, are meant too.
bool ReadingsDialog::isMarkedChosen(std::size_t rows) const
{
    return m_marked && rows == m_view.size();
}

void ReadingsDialog::fillSubjects()
{
    m_subject->clear();
    for (const ReadingSubject& subject : m_view.subjects) {
        m_subject->addItem(shown(subject.name), subject.meter);
        if (subject == m_view.subject)
            m_subject->setCurrentIndex(m_subject->count() - 1);
    }
    const auto meters = m_subject->findData(true);
    if (meters > 0)
        m_subject->insertSeparator(meters);
}

ReadingSubject ReadingsDialog::chosenSubject() const
{
    if (m_subject->count() == 0)
        return m_first;
    return {m_subject->currentData().toBool(), core(m_subject->currentText())};
}

std::vector<std::size_t> ReadingsDialog::chosenRows() const
{
    std::vector<std::size_t> rows;
    for (const QModelIndex& row : m_table->selectionModel()->selectedRows())
        rows.push_back(static_cast<std::size_t>(row.row()));
    std::sort(rows.begin(), rows.end());
    return rows;
}

void ReadingsDialog::askToLeaveOut()
{
    const std::string why = core(m_why->text().trimmed());
    const auto rows = chosenRows();
    save(leaveOut(m_view, rows, why, isMarkedChosen(rows.size())));
    if (!rows.empty() && why.empty())
        m_why->setFocus();
}

void ReadingsDialog::askToCorrect()
{
    const auto number = parseTypedNumber(core(m_value->text().trimmed()), decimalSign());
    if (!number && chosenRows().size() == 1) {
        say(sentence(number.error()));
        m_value->setFocus();
        return;
    }
    save(correct(m_view, chosenRows(), number.value_or(Decimal{}), core(m_why->text().trimmed())));
}

void ReadingsDialog::save(Result<ReadingEdit> edit)
{
    if (!edit)
        return say(sentence(edit.error()));
    m_session->change<void>(this, *edit, [this](Done stored) {
        if (!stored)
            return say(sentence(stored.error()));
        m_value->clear();
        m_why->clear();
        m_session->announceChange(); // which refreshes this dialog too
    });
}

QString ReadingsDialog::message() const
{
    return m_message->text();
}

void ReadingsDialog::say(const QString& words)
{
    m_message->setText(words);
    m_message->setAccessibleName(words);
}

} // namespace holdband::ui
