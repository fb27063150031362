#include "ui/tables/notes_card.h"

#include "ui/theme/theme.h"

#include <QLabel>
#include <QVBoxLayout>

namespace holdband::ui {

NotesCard::NotesCard(const QString& title, QWidget* parent, Tone tone) : Card(title, parent, tone)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    hide();
}

void NotesCard::setSentences(const QStringList& sentences)
{
    m_sentences = sentences;
    clearLayout(contents());
    for (const QString& text : sentences) {
        QLabel* label = makeLabel(text, tone() == Tone::care ? "care" : "plain", this);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        contents()->addWidget(label);
    }
    setVisible(!sentences.isEmpty());
}

} // namespace holdband::ui
