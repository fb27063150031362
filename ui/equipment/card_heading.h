// Puts a button into the heading line of a card, or makes such a line for cards that follow.
#pragma once

class QPushButton;
class QString;
class QWidget;

namespace holdband::ui {

class Card;

/// At its right end.
void addToHeading(Card& card, QPushButton* button);

/// A line with a title to the left and the button to the right.
QWidget* makeHeadingLine(const QString& title, QPushButton* button, QWidget* parent);

} // namespace holdband::ui
