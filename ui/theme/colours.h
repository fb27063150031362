// The colours of the window, light and dark, and the spacing that all pages share. The hues of data
// are those of Okabe and Ito (Color Universal Design, 2008); they never carry a meaning alone. The
// set is chosen by the widget's own palette, so there is no global state.
#pragma once

#include <QColor>
#include <QPalette>
#include <QWidget>

namespace holdband::ui {

enum class Scheme { light, dark };

struct Colours {
    QColor page;
    QColor card;
    QColor cardEdge;
    QColor fieldEdge;
    QColor text;
    QColor muted; ///< secondary text; 4.5:1 on page and card
    QColor grid;
    QColor button;
    QColor buttonEdge;
    QColor chosen; ///< behind the chosen row of a table
    QColor strong; ///< the current page, the main button
    QColor strongText;
    QColor focus;
    QColor warn;     ///< text of a refusal; 4.5:1 on card and warnBack
    QColor warnBack; ///< behind a question or a refusal
    QColor careBack;
    QColor careEdge;
    QColor careText;
    QColor bubble;
    QColor bubbleText;
    // Colours of data.
    QColor ambient;
    QColor chamber;
    QColor coolant;
    QColor target;
    QColor targetText;
    QColor band;
    QColor gap;
    QColor hatch;
    QColor excursion;
    QColor excursionFill;
};

const Colours& coloursOf(Scheme scheme);
const Colours& coloursOf(const QPalette& palette);
const Colours& coloursOf(const QWidget& widget);
Scheme schemeOf(const QPalette& palette);

/// The colour of a setup by its index in the logbook: blue, purple, sky, ochre, black, then again.
QColor setupColour(int index);
/// A pale version of it for the background of text.
QColor setupFill(int index, const Colours& colours, bool chosen = false);
/// A version of it that is readable as text on a card (4.5:1).
QColor setupText(int index, const Colours& colours);
/// For lines, bars and dots: on a dark background lighter, as for text, because the blue would be
/// too dark.
QColor setupLine(int index, const Colours& colours);

/// `share` of the first colour over the second.
QColor mixed(const QColor& over, const QColor& under, double share);
/// Relative luminance contrast after WCAG 2.1, 1 … 21.
double contrast(const QColor& a, const QColor& b);

namespace spacing {
inline constexpr int page = 10; ///< around a page
inline constexpr int gap = 8;   ///< between cards
inline constexpr int card = 12; ///< inside a card
inline constexpr int radius = 5;
} // namespace spacing

} // namespace holdband::ui
