// The look of controls: the platform's Fusion style with our colours, edges that are visible on a
// dark page, and a visible focus. A style and no style sheet, which would double the time until the
// window is shown.
#pragma once

#include "ui/theme/colours.h"

#include <QProxyStyle>

namespace holdband::ui {

class HouseStyle : public QProxyStyle {
    Q_OBJECT
public:
    explicit HouseStyle(Scheme scheme);

    using QProxyStyle::polish;
    /// Gives a widget the colours of its role (see setRole) and removes the backgrounds of tables.
    void polish(QWidget* widget) override;

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget) const override;
    QRect subElementRect(SubElement element, const QStyleOption* option,
                         const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                         const QWidget* widget) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override;

private:
    const Colours& m_colours;
};

} // namespace holdband::ui
