#include "ui/theme/colours.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace holdband::ui {

namespace {

// Okabe and Ito's eight, without yellow. Vermillion is a warning and nothing else.
const QColor blue(0x00, 0x72, 0xB2);
const QColor vermillion(0xD5, 0x5E, 0x00);
const QColor green(0x00, 0x9E, 0x73);
const QColor sky(0x56, 0xB4, 0xE9);
const QColor ochre(0xB8, 0x86, 0x00);       // their orange, darker, so that it is no warning
const QColor setupPurple(0xA0, 0x42, 0x7E); // their purple, darker, for lines and text
const QColor black(0x2B, 0x36, 0x3D);

QColor veil(QColor colour, int alpha)
{
    colour.setAlpha(alpha);
    return colour;
}

Colours lightColours()
{
    Colours c;
    c.page = QColor("#faf9f5");
    c.card = QColor("#ffffff");
    c.cardEdge = QColor("#e1e4e6");
    c.fieldEdge = QColor("#87929b");
    c.text = QColor("#1f2d36");
    c.muted = QColor("#58646d");
    c.grid = QColor("#eceff1");
    c.button = QColor("#ffffff");
    c.buttonEdge = QColor("#c3cad0");
    c.chosen = QColor("#e6eff5");
    c.strong = QColor("#22313b");
    c.strongText = QColor("#ffffff");
    c.focus = blue;
    c.warn = QColor("#ab3500");
    c.warnBack = QColor("#fff2ec");
    c.careBack = QColor("#fff6ea");
    c.careEdge = QColor("#f0dcbc");
    c.careText = QColor("#6b4700");
    c.bubble = QColor("#2c3a44");
    c.bubbleText = QColor("#ffffff");
    c.ambient = QColor("#7d878e");
    c.chamber = veil(sky, 120);
    c.coolant = QColor("#4e6e81");
    c.target = green;
    c.targetText = QColor("#00704f");
    c.band = veil(green, 34);
    c.gap = QColor("#e6e8ea");
    c.hatch = QColor("#b9c0c5");
    c.excursion = vermillion;
    c.excursionFill = veil(vermillion, 110);
    return c;
}

Colours darkColours()
{
    Colours c;
    c.page = QColor("#14181b");
    c.card = QColor("#1d2327");
    c.cardEdge = QColor("#343d43");
    c.fieldEdge = QColor("#7c8790");
    c.text = QColor("#e8ebed");
    c.muted = QColor("#a7b1b8");
    c.grid = QColor("#2a3136");
    c.button = QColor("#2a3237");
    c.buttonEdge = QColor("#4a555c");
    c.chosen = QColor("#2c3d48");
    c.strong = QColor("#dbe3e8");
    c.strongText = QColor("#14181b");
    c.focus = sky;
    c.warn = QColor("#ff9d61");
    c.warnBack = QColor("#33231a");
    c.careBack = QColor("#2b2417");
    c.careEdge = QColor("#54441f");
    c.careText = QColor("#efcf91");
    c.bubble = QColor("#e3e9ec");
    c.bubbleText = QColor("#14181b");
    c.ambient = QColor("#8d979e");
    c.chamber = veil(QColor("#2f93cf"), 115);
    c.coolant = QColor("#8fb0c4");
    c.target = QColor("#1fbf91");
    c.targetText = QColor("#3ecfa4");
    c.band = veil(green, 62);
    c.gap = QColor("#31383d");
    c.hatch = QColor("#566067");
    c.excursion = QColor("#ff7a1f");
    c.excursionFill = veil(QColor("#ff7a1f"), 120);
    return c;
}

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

const Colours& coloursOf(Scheme scheme)
{
    static const Colours light = lightColours();
    static const Colours dark = darkColours();
    return scheme == Scheme::light ? light : dark;
}

Scheme schemeOf(const QPalette& palette)
{
    // Decided by the text's colour, because backgrounds may be transparent.
    return palette.color(QPalette::WindowText).lightness() < 128 ? Scheme::light : Scheme::dark;
}

const Colours& coloursOf(const QPalette& palette)
{
    return coloursOf(schemeOf(palette));
}

const Colours& coloursOf(const QWidget& widget)
{
    return coloursOf(widget.palette());
}

QColor setupColour(int index)
{
    static const std::array<QColor, 5> order{blue, setupPurple, sky, ochre, black};
    return order[static_cast<std::size_t>(std::max(index, 0)) % order.size()];
}

QColor setupFill(int index, const Colours& colours, bool chosen)
{
    return mixed(setupColour(index), colours.card, chosen ? 0.38 : 0.18);
}

namespace {

bool isDark(const Colours& colours)
{
    return colours.card.lightness() < 128;
}

} // namespace

QColor setupText(int index, const Colours& colours)
{
    const QColor towards = isDark(colours) ? Qt::white : Qt::black;
    QColor colour = setupColour(index);
    for (double share = 0.95; contrast(colour, colours.card) < 4.5 && share > 0.0; share -= 0.05)
        colour = mixed(setupColour(index), towards, share);
    return colour;
}

QColor setupLine(int index, const Colours& colours)
{
    return isDark(colours) ? setupText(index, colours) : setupColour(index);
}

QColor mixed(const QColor& over, const QColor& under, double share)
{
    const auto mix = [share](int a, int b) {
        return static_cast<int>(std::lround(share * a + (1.0 - share) * b));
    };
    return {mix(over.red(), under.red()), mix(over.green(), under.green()),
            mix(over.blue(), under.blue())};
}

double contrast(const QColor& a, const QColor& b)
{
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace holdband::ui
