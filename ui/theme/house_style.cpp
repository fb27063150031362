#include "ui/theme/house_style.h"

#include "ui/theme/control_painting.h"

#include <QAbstractItemView>
#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QStyleFactory>
#include <QStyleOption>
#include <QTableView>
#include <algorithm>

namespace holdband::ui {

namespace {

constexpr QSize buttonRoom(30, 12); ///< around a button's text: both sides, above and below
constexpr QSize foldRoom(8, 4);
constexpr QSize tabRoom(22, 16);
constexpr int lineRoom = 4;  ///< above and below the typed text
constexpr int lineInset = 5; ///< left and right of it
constexpr int scrollBreadth = 11;
constexpr int leastHandle = 28;

QByteArray roleOf(const QWidget* widget)
{
    return widget ? widget->property("role").toByteArray() : QByteArray();
}

/// The colour of a label's text; invalid: the palette's.
QColor wordsColour(const QByteArray& role, const Colours& c)
{
    if (role == "muted")
        return c.muted;
    if (role == "warn")
        return c.warn;
    if (role == "care" || role == "caretitle")
        return c.careText;
    return c.text;
}

void polishTable(QAbstractItemView& view, const Colours& c)
{
    view.viewport()->setAutoFillBackground(false);
    QPalette own; // other colours follow the application
    own.setColor(QPalette::Highlight, c.chosen);
    own.setColor(QPalette::HighlightedText, c.text);
    view.setPalette(own);
}

void polishArea(QScrollArea& area)
{
    area.setFrameShape(QFrame::NoFrame);
    area.viewport()->setAutoFillBackground(false);
    QWidget* inner = area.widget();
    if (inner && inner->objectName() == QLatin1String("inner"))
        inner->setAutoFillBackground(false);
}

/// A button without a box of its own.
bool isBare(const QWidget* widget)
{
    const QByteArray role = roleOf(widget);
    return role == "page" || role == "fold";
}

/// The one button of a page or dialog to press first.
bool isMain(const QWidget* widget)
{
    return roleOf(widget) == "main";
}

/// A tab of the window, or the heading of a card that folds: text on the page, with a line below
/// the chosen tab.
void paintBareButton(QPainter& painter, const QStyleOption& option, bool isTab, const Colours& c)
{
    const bool chosen = option.state & QStyle::State_On;
    if (isTab && (chosen || option.state & QStyle::State_MouseOver)) {
        const QRect line(option.rect.left() + 8, option.rect.bottom() - 2, option.rect.width() - 16,
                         3);
        painter.fillRect(line, chosen ? c.strong : c.cardEdge);
    }
    // A click needs no frame: the line shows what it chose.
    if (option.state & QStyle::State_HasFocus && option.state & QStyle::State_KeyboardFocusChange)
        paintBox(painter, option.rect.adjusted(0, 1, 0, -4), {Qt::transparent, c.focus, 1.5, 4.0});
}

ControlLook buttonLook(const QStyleOption& option, bool strong, const Colours& c)
{
    if (!(option.state & QStyle::State_Enabled))
        return {Qt::transparent, c.cardEdge, 1.0, 5.0};
    ControlLook look{strong ? c.strong : c.button, strong ? c.strong : c.buttonEdge, 1.0, 5.0};
    if (option.state & QStyle::State_On && !strong) // pressed in; only the main button is filled
        look.ground = c.chosen;
    if (option.state & QStyle::State_Sunken && !strong)
        look.ground = mixed(c.fieldEdge, c.button, 0.35);
    if (option.state & QStyle::State_HasFocus)
        look = {look.ground, c.focus, 2.0, 5.0};
    else if (option.state & QStyle::State_MouseOver && !strong)
        look.edge = c.fieldEdge;
    return look;
}

void paintButton(QPainter& painter, const QStyleOption& option, const QWidget* widget,
                 const Colours& c)
{
    if (isBare(widget))
        return paintBareButton(painter, option, roleOf(widget) == "page", c);
    const ControlLook look = buttonLook(option, isMain(widget), c);
    paintBox(painter, option.rect, look);
    // The focus colour and that of a strong button are similar: a line separates them.
    if (option.state & QStyle::State_HasFocus && isMain(widget))
        paintBox(painter, option.rect.adjusted(2, 2, -2, -2),
                 {Qt::transparent, c.strongText, 1.0, 4.0});
}

void paintLine(QPainter& painter, const QStyleOption& option, const QWidget* widget,
               const Colours& c)
{
    const bool enabled = option.state & QStyle::State_Enabled;
    ControlLook look = lookOf(option, c, enabled ? c.card : c.page, c.fieldEdge);
    const QByteArray role = roleOf(widget);
    if (role == "refused")
        look = {c.card, c.warn, 2.0, 4.0};
    if (role == "cell")
        look.radius = 0.0;
    paintBox(painter, option.rect, look);
}

void paintTickBox(QPainter& painter, const QStyleOption& option, const Colours& c)
{
    const bool on = option.state & QStyle::State_On;
    const bool part = option.state & QStyle::State_NoChange;
    const bool enabled = option.state & QStyle::State_Enabled;
    const QColor ground = enabled && (on || part) ? c.strong : c.card;
    const QRect box = option.rect.adjusted(1, 1, -1, -1);
    ControlLook look = lookOf(option, c, ground, enabled ? c.fieldEdge : c.cardEdge);
    look.radius = 1.5; // nearly square, so that it is no option button
    paintBox(painter, box, look);
    const QColor mark = enabled ? c.strongText : c.muted;
    if (on)
        paintTick(painter, box, mark);
    else if (part)
        paintPartTick(painter, box, mark);
}

/// A tick box or option button is nearly as large as its text.
int indicatorSize(const QStyleOption* option, const QWidget* widget)
{
    const QFontMetrics metrics = option   ? option->fontMetrics
                                 : widget ? widget->fontMetrics()
                                          : QFontMetrics(QFont());
    return metrics.height() * 3 / 4;
}

void paintFocus(QPainter& painter, const QStyleOption& option, const Colours& c)
{
    paintBox(painter, option.rect, {Qt::transparent, c.focus, 1.5, 3.0});
}

QStyleOptionHeader headerText(const QStyleOption& option, const Colours& c)
{
    QStyleOptionHeader header = *qstyleoption_cast<const QStyleOptionHeader*>(&option);
    header.palette.setColor(QPalette::ButtonText, c.muted);
    header.palette.setColor(QPalette::WindowText, c.muted);
    return header;
}

void paintButtonText(QPainter& painter, const QStyleOption& option, const QWidget* widget,
                     const Colours& c, const QStyle& style)
{
    const auto& button = *qstyleoption_cast<const QStyleOptionButton*>(&option);
    const bool enabled = option.state & QStyle::State_Enabled;
    const bool left = widget && widget->property("wordsLeft").toBool();
    const bool fold = roleOf(widget) == "fold";
    const bool quietTab = roleOf(widget) == "page" && !(option.state & QStyle::State_On);
    QRect rect = option.rect.adjusted(left ? 13 : fold ? 4 : 2, 0, -2, 0);
    painter.save();
    painter.setPen(!enabled         ? mixed(c.muted, c.page, 0.7)
                   : isMain(widget) ? c.strongText
                   : quietTab       ? c.muted
                                    : c.text);
    painter.drawText(rect,
                     (left || fold ? Qt::AlignLeft : Qt::AlignHCenter) | Qt::AlignVCenter |
                         (style.styleHint(QStyle::SH_UnderlineShortcut, &option, widget)
                              ? Qt::TextShowMnemonic
                              : Qt::TextHideMnemonic),
                     button.text);
    painter.restore();
}

void paintList(QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow,
               const Colours& c)
{
    const bool enabled = option.state & QStyle::State_Enabled;
    const QColor ground = option.editable ? c.card : c.button;
    const QColor quiet = enabled ? c.fieldEdge : c.cardEdge;
    paintBox(painter, option.rect, lookOf(option, c, enabled ? ground : c.page, quiet));
    paintAngle(painter, arrow, enabled ? c.text : c.muted, true);
}

void paintSpin(QPainter& painter, const QStyleOptionSpinBox& option, const QRect& up,
               const QRect& down, const Colours& c)
{
    const bool enabled = option.state & QStyle::State_Enabled;
    paintBox(painter, option.rect, lookOf(option, c, enabled ? c.card : c.page, c.fieldEdge));
    const auto arrow = [&](QAbstractSpinBox::StepEnabledFlag step) {
        return enabled && option.stepEnabled & step ? c.text : c.fieldEdge;
    };
    paintAngle(painter, up, arrow(QAbstractSpinBox::StepUpEnabled), false);
    paintAngle(painter, down, arrow(QAbstractSpinBox::StepDownEnabled), true);
}

void paintTab(QPainter& painter, const QStyleOption& option, const Colours& c)
{
    const bool chosen = option.state & QStyle::State_Selected;
    const bool hovered = option.state & QStyle::State_MouseOver;
    const QRect tab = option.rect.adjusted(0, 0, -2, chosen ? 6 : 0);
    painter.save();
    painter.setClipRect(option.rect);
    if (chosen || hovered)
        paintBox(painter, tab, {c.card, c.cardEdge, 1.0, 4.0});
    if (chosen)
        painter.fillRect(QRect(tab.left() + 6, option.rect.top(), tab.width() - 12, 2), c.strong);
    painter.restore();
}

/// The handle of a scroll bar within its groove.
QRect handleOf(const QStyleOptionSlider& bar)
{
    const bool across = bar.orientation == Qt::Horizontal;
    const int length = across ? bar.rect.width() : bar.rect.height();
    const qint64 range = qint64(bar.maximum) - bar.minimum;
    const qint64 whole = std::max<qint64>(range + bar.pageStep, 1);
    const int shown = static_cast<int>(qint64(bar.pageStep) * length / whole);
    const int handle =
        range == 0 ? length : std::clamp(shown, std::min(leastHandle, length), length);
    const int at = QStyle::sliderPositionFromValue(bar.minimum, bar.maximum, bar.sliderPosition,
                                                   length - handle, bar.upsideDown);
    return across ? QRect(bar.rect.x() + at, bar.rect.y(), handle, bar.rect.height())
                  : QRect(bar.rect.x(), bar.rect.y() + at, bar.rect.width(), handle);
}

} // namespace

HouseStyle::HouseStyle(Scheme scheme)
    : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))), m_colours(coloursOf(scheme))
{
}

void HouseStyle::polish(QWidget* widget)
{
    QProxyStyle::polish(widget);
    if (auto* header = qobject_cast<QHeaderView*>(widget))
        header->viewport()->setAutoFillBackground(false);
    else if (auto* table = qobject_cast<QTableView*>(widget))
        polishTable(*table, m_colours);
    else if (auto* area = qobject_cast<QScrollArea*>(widget))
        polishArea(*area);
    auto* label = qobject_cast<QLabel*>(widget);
    if (!label)
        return;
    // Names typed by people may look like markup. Of all labels, only a tooltip's contains our own
    // markup.
    if (label->textFormat() == Qt::AutoText && !label->inherits("QTipLabel"))
        label->setTextFormat(Qt::PlainText);
    const QByteArray role = roleOf(widget);
    if (role.isEmpty())
        return;
    QPalette own; // only the text colours: others follow the application
    own.setColor(QPalette::WindowText, wordsColour(role, m_colours));
    widget->setPalette(own);
}

void HouseStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const
{
    switch (element) {
    case PE_PanelButtonCommand:
        return paintButton(*painter, *option, widget, m_colours);
    case PE_FrameDefaultButton:
        return;
    case PE_PanelLineEdit:
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            frame && frame->lineWidth > 0)
            return paintLine(*painter, *option, widget, m_colours);
        return; // parts of a list or a spin box, which draw themselves
    case PE_FrameLineEdit:
        return;
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        return paintTickBox(*painter, *option, m_colours);
    case PE_IndicatorRadioButton:
        return paintRing(*painter, option->rect.adjusted(1, 1, -1, -1),
                         lookOf(*option, m_colours, m_colours.card, m_colours.fieldEdge),
                         option->state & State_On, m_colours.text);
    case PE_FrameFocusRect:
        return paintFocus(*painter, *option, m_colours);
    case PE_FrameTabWidget:
        return paintBox(*painter, option->rect, {m_colours.card, m_colours.cardEdge, 1.0, 4.0});
    case PE_FrameTabBarBase:
        return;
    case PE_Frame:
        if (qobject_cast<const QTableView*>(widget)) {
            if (option->state & State_HasFocus)
                paintBox(*painter, option->rect, {Qt::transparent, m_colours.focus, 1.0, 3.0});
            return;
        }
        break;
    default:
        break;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void HouseStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const
{
    switch (element) {
    case CE_PushButtonLabel:
        return paintButtonText(*painter, *option, widget, m_colours, *this);
    case CE_TabBarTabShape:
        return paintTab(*painter, *option, m_colours);
    case CE_HeaderSection:
    case CE_HeaderEmptyArea:
        return;
    case CE_HeaderLabel: {
        const QStyleOptionHeader header = headerText(*option, m_colours);
        return QProxyStyle::drawControl(element, &header, painter, widget);
    }
    default:
        QProxyStyle::drawControl(element, option, painter, widget);
    }
}

void HouseStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const
{
    if (const auto* list = qstyleoption_cast<const QStyleOptionComboBox*>(option);
        list && control == CC_ComboBox)
        return paintList(*painter, *list,
                         subControlRect(CC_ComboBox, option, SC_ComboBoxArrow, widget), m_colours);
    if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
        spin && control == CC_SpinBox)
        return paintSpin(*painter, *spin, subControlRect(CC_SpinBox, option, SC_SpinBoxUp, widget),
                         subControlRect(CC_SpinBox, option, SC_SpinBoxDown, widget), m_colours);
    if (control == CC_ScrollBar) {
        const QRect handle = subControlRect(CC_ScrollBar, option, SC_ScrollBarSlider, widget);
        const bool held = option->state & State_Sunken;
        const QColor colour = held ? m_colours.muted : m_colours.fieldEdge;
        return paintBox(*painter, handle.adjusted(2, 1, -1, -1),
                        {colour, Qt::transparent, 0.0, 4.0});
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QSize HouseStyle::sizeFromContents(ContentsType type, const QStyleOption* option,
                                   const QSize& contents, const QWidget* widget) const
{
    if (type == CT_PushButton && roleOf(widget) == "fold")
        return contents + foldRoom;
    if (type == CT_PushButton && roleOf(widget) == "page")
        return contents + tabRoom;
    if (type == CT_PushButton)
        return contents + buttonRoom;
    const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    if (type == CT_LineEdit && roleOf(widget) != "cell")
        return {size.width() + 2 * lineInset, contents.height() + 2 * lineRoom + 2};
    return size;
}

QRect HouseStyle::subElementRect(SubElement element, const QStyleOption* option,
                                 const QWidget* widget) const
{
    const QRect rect = QProxyStyle::subElementRect(element, option, widget);
    const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
    if (element == SE_LineEditContents && frame && frame->lineWidth > 0) {
        const int inset = roleOf(widget) == "cell" ? 0 : lineInset;
        return option->rect.adjusted(inset + 1, 1, -inset - 1, -1);
    }
    return rect;
}

QRect HouseStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                                 SubControl part, const QWidget* widget) const
{
    const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
    if (control != CC_ScrollBar || !bar)
        return QProxyStyle::subControlRect(control, option, part, widget);
    const QRect handle = handleOf(*bar);
    const bool across = bar->orientation == Qt::Horizontal;
    QRect before = bar->rect;
    QRect after = bar->rect;
    switch (part) {
    case SC_ScrollBarSlider:
        return handle;
    case SC_ScrollBarGroove:
        return bar->rect;
    case SC_ScrollBarSubPage:
        across ? before.setRight(handle.left() - 1) : before.setBottom(handle.top() - 1);
        return before;
    case SC_ScrollBarAddPage:
        across ? after.setLeft(handle.right() + 1) : after.setTop(handle.bottom() + 1);
        return after;
    default:
        return {};
    }
}

int HouseStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                            const QWidget* widget) const
{
    switch (metric) {
    case PM_ScrollBarExtent:
        return scrollBreadth;
    case PM_ScrollBarSliderMin:
        return leastHandle;
    case PM_FocusFrameHMargin: // left and right of a cell's text
        return qobject_cast<const QTableView*>(widget)
                   ? 4
                   : QProxyStyle::pixelMetric(metric, option, widget);
    case PM_HeaderMargin:
        return 4;
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return std::max(QProxyStyle::pixelMetric(metric, option, widget),
                        indicatorSize(option, widget));
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

} // namespace holdband::ui
