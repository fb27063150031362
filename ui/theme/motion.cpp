#include "ui/theme/motion.h"

#include <QVariantAnimation>
#include <QWidget>

namespace holdband::ui {

namespace {

constexpr int easeMs = 120;
const QString easingName = QStringLiteral("easing");

bool& allowed()
{
    static bool on = false;
    return on;
}

void settleOpen(QWidget& part, bool open)
{
    part.setVisible(open);
    part.setMaximumHeight(QWIDGETSIZE_MAX);
}

int wantedHeight(const QWidget& part)
{
    return part.hasHeightForWidth() && part.width() > 0 ? part.heightForWidth(part.width())
                                                        : part.sizeHint().height();
}

} // namespace

void setMotion(bool on)
{
    allowed() = on;
}

int motionMs()
{
    return allowed() ? easeMs : 0;
}

void easeOpen(QWidget& part, bool open)
{
    delete part.findChild<QVariantAnimation*>(easingName, Qt::FindDirectChildrenOnly);
    const bool seen = part.parentWidget() && part.parentWidget()->isVisible();
    if (motionMs() == 0 || !seen)
        return settleOpen(part, open);
    const int from = part.isVisible() ? part.height() : 0;
    auto* easing = new QVariantAnimation(&part);
    easing->setObjectName(easingName);
    easing->setDuration(motionMs());
    easing->setEasingCurve(QEasingCurve::OutCubic);
    easing->setStartValue(from);
    easing->setEndValue(open ? wantedHeight(part) : 0);
    QObject::connect(easing, &QVariantAnimation::valueChanged, &part,
                     [&part](const QVariant& height) { part.setMaximumHeight(height.toInt()); });
    QObject::connect(easing, &QVariantAnimation::finished, &part,
                     [&part, open] { settleOpen(part, open); });
    part.setMaximumHeight(from);
    part.setVisible(true);
    easing->start(QAbstractAnimation::DeleteWhenStopped);
}

} // namespace holdband::ui
