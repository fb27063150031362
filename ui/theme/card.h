// A pale frame with a heading, in which a page's contents stand.
#pragma once

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace holdband::ui {

class Card : public QWidget {
    Q_OBJECT
public:
    enum class Tone { plain, care };

    explicit Card(const QString& title, QWidget* parent = nullptr, Tone tone = Tone::plain);

    /// Where the contents go, below the heading.
    QVBoxLayout* contents() const { return m_contents; }
    void setTitle(const QString& title);
    Tone tone() const { return m_tone; }
    /// Second-rank words at the right end of the heading.
    void setAside(const QString& words);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Tone m_tone;
    QLabel* m_title;
    QLabel* m_aside;
    QVBoxLayout* m_contents;
};

/// The frame of a card drawn by a widget that paints itself.
void paintCard(QPainter& painter, const QWidget& widget);

/// Removes and deletes everything in the layout.
void clearLayout(QLayout* layout);

} // namespace holdband::ui
