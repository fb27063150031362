#include "ui/forms/save_row.h"

#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace holdband::ui {

SaveRow::SaveRow(const QString& saveText, QWidget* parent)
    : QWidget(parent), m_saveText(saveText), m_words(makeLabel({}, "warn", this)),
      m_save(new QPushButton(saveText, this)), m_cancel(new QPushButton(Words::tr("Cancel"), this))
{
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words, 1);
    layout->addWidget(m_cancel, 0, Qt::AlignBottom);
    layout->addWidget(m_save, 0, Qt::AlignBottom);
    setRole(m_save, "main");
    m_save->setDefault(true);
    m_cancel->setAutoDefault(true); // Enter on it cancels
    m_words->setAccessibleName(Words::tr("What is wrong or asked"));
    connect(m_save, &QPushButton::clicked, this, &SaveRow::saveWanted);
    connect(m_cancel, &QPushButton::clicked, this, &SaveRow::cancelWanted);
}

void SaveRow::say(const QString& words)
{
    m_words->setText(words);
    m_words->setAccessibleDescription(words);
}

void SaveRow::refuse(const QString& sentence)
{
    reset();
    say(sentence);
}

bool SaveRow::agreed(const QStringList& questions)
{
    if (questions.isEmpty() || questions == m_asked) {
        reset();
        return true;
    }
    reset();
    m_asked = questions;
    say(questions.join(QLatin1Char(' ')));
    m_save->setText(Words::tr("Yes, save"));
    m_save->setFocus();
    return false;
}

bool SaveRow::leaveAgreed()
{
    if (m_leaveAsked)
        return true;
    reset();
    m_leaveAsked = true;
    say(Words::tr("What you typed here has not been saved."));
    m_cancel->setText(Words::tr("Discard"));
    return false;
}

void SaveRow::reset()
{
    m_asked.clear();
    m_leaveAsked = false;
    say({});
    m_save->setText(m_saveText);
    m_cancel->setText(Words::tr("Cancel"));
}

void SaveRow::setBusy(bool busy)
{
    m_save->setEnabled(!busy);
}

QString SaveRow::words() const
{
    return m_words->text();
}

} // namespace holdband::ui
