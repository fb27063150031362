// A card of sentences, one below the other: cautions, findings, fairness notes.
#pragma once

#include "ui/theme/card.h"

#include <QStringList>

namespace holdband::ui {

class NotesCard : public Card {
    Q_OBJECT
public:
    explicit NotesCard(const QString& title, QWidget* parent = nullptr, Tone tone = Tone::care);

    /// Hidden if there are none.
    void setSentences(const QStringList& sentences);
    const QStringList& sentences() const { return m_sentences; }

private:
    QStringList m_sentences;
};

} // namespace holdband::ui
