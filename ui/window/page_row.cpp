#include "ui/window/page_row.h"

#include "ui/theme/elided_label.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QSignalBlocker>

namespace holdband::ui {

QString pageTitle(PageId page)
{
    switch (page) {
    case PageId::rounds:
        return Words::tr("Rounds");
    case PageId::run:
        return Words::tr("Run");
    case PageId::sideBySide:
        return Words::tr("Side by side");
    case PageId::nextBatch:
        return Words::tr("Next batch");
    case PageId::equipment:
        return Words::tr("Equipment");
    case PageId::imports:
        break;
    }
    return Words::tr("Imports");
}

QString helpFor(PageId page)
{
    switch (page) {
    case PageId::rounds:
        return QStringLiteral("rounds.md");
    case PageId::run:
        return QStringLiteral("run.md");
    case PageId::sideBySide:
        return QStringLiteral("side-by-side.md");
    case PageId::nextBatch:
        return QStringLiteral("next-batch.md");
    case PageId::equipment:
        return QStringLiteral("equipment.md");
    case PageId::imports:
        break;
    }
    return QStringLiteral("imports.md");
}

PageRow::PageRow(QWidget* parent)
    : QWidget(parent), m_buttons(new QButtonGroup(this)), m_subtitle(new ElidedLabel({}, this))
{
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    for (int i = 0; i < pageCount; ++i) {
        auto* button = new QPushButton(pageTitle(static_cast<PageId>(i)), this);
        button->setCheckable(true);
        button->setAutoExclusive(true); // announces one of several to assistive technology
        button->setToolTip(QStringLiteral("Alt+%1").arg(i + 1));
        setRole(button, "page");
        m_buttons->addButton(button, i);
        layout->addWidget(button);
    }
    layout->addSpacing(12);
    layout->addWidget(m_subtitle, 1);
    setRole(m_subtitle, "muted");
    // idToggled, not idClicked: assistive technology toggles.
    connect(m_buttons, &QButtonGroup::idToggled, this, [this](int id, bool on) {
        if (on)
            Q_EMIT pageChosen(static_cast<PageId>(id));
    });
    setPage(PageId::run);
}

void PageRow::setPage(PageId page)
{
    const QSignalBlocker quiet(m_buttons);
    m_buttons->button(static_cast<int>(page))->setChecked(true);
}

PageId PageRow::page() const
{
    return static_cast<PageId>(m_buttons->checkedId());
}

void PageRow::setSubtitle(const QString& words)
{
    m_subtitle->setWholeText(words);
}

void PageRow::keyPressEvent(QKeyEvent* event)
{
    // The group moves the selection with the arrow keys; the page follows.
    QWidget::keyPressEvent(event);
    if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right)
        Q_EMIT pageChosen(page());
}

} // namespace holdband::ui
