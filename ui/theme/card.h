// A pale frame with a heading that holds a page's contents.
#pragma once

#include <QPixmap>
#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace holdband::ui {

class FoldButton;

class Card : public QWidget {
    Q_OBJECT
public:
    enum class Tone { plain, care };

    explicit Card(const QString& title, QWidget* parent = nullptr, Tone tone = Tone::plain);

    /// The layout for the contents, below the heading.
    QVBoxLayout* contents() const { return m_contents; }
    void setTitle(const QString& title);
    Tone tone() const { return m_tone; }
    /// A secondary text at the right end of the heading.
    void setSecondaryText(const QString& words);
    /// The heading becomes a button that folds the contents away and back.
    void makeFoldable(bool folded);
    void setFolded(bool folded);
    bool isFolded() const;
    /// Null unless the card can be folded.
    QPushButton* foldButton() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void showFold();

    Tone m_tone;
    QLabel* m_title;
    FoldButton* m_fold = nullptr;
    QLabel* m_secondaryText;
    QWidget* m_body;
    QVBoxLayout* m_contents;
};

/// Draws a card's frame for a widget that paints itself.
void paintCard(QPainter& painter, const QWidget& widget);

/// A card's frame for a widget that paints itself, as a picture at the screen's resolution to draw
/// more on.
QPixmap cardPicture(const QWidget& widget);

/// Removes and deletes everything in the layout.
void clearLayout(QLayout* layout);

} // namespace holdband::ui
