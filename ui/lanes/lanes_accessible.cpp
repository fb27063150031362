#include "ui/lanes/lanes_accessible.h"

#include "ui/lanes/lanes_text.h"
#include "ui/lanes/lanes_view.h"
#include "ui/words/words.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>
#include <vector>

namespace holdband::ui {

namespace {

class BarInterface : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    BarInterface(LanesView& view, std::size_t index) : m_view(&view), m_index(index) {}

    bool isValid() const override { return m_view && m_index < m_view->barCount(); }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return m_view ? m_view->window()->windowHandle() : nullptr; }
    QAccessibleInterface* parent() const override
    {
        return QAccessible::queryAccessibleInterface(m_view);
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }

    QString text(QAccessible::Text text) const override
    {
        if (!isValid())
            return {};
        const results::LaneBar& bar = *m_view->barOf(m_index);
        if (text == QAccessible::Name)
            return shown(bar.batch) + QStringLiteral(", ") + m_view->setupOf(m_index);
        if (text == QAccessible::Description)
            return shown(bar.headline);
        return text == QAccessible::Value ? markMeaning(bar) : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}

    QRect rect() const override
    {
        if (!isValid())
            return {};
        const LanesLayout& placed = m_view->placed();
        const QRect box = placed.drawnBox(m_index).intersected(placed.plot).toAlignedRect();
        return {m_view->mapToGlobal(box.topLeft()), box.size()};
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.invalid = !isValid();
        if (state.invalid)
            return state;
        state.focusable = state.selectable = true;
        state.focused = m_view->hasFocus() && m_view->currentIndex() == m_index;
        state.selected = m_view->chosen().contains(shown(m_view->barOf(m_index)->batch));
        state.offscreen = rect().isEmpty();
        state.disabled = !m_view->isEnabled();
        state.invisible = !m_view->isVisible();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }
    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& action) override
    {
        if (!isValid())
            return;
        m_view->setFocus();
        if (action == pressAction())
            m_view->open(m_index);
        else if (action == setFocusAction())
            m_view->setCurrent(m_index);
    }
    QStringList keyBindingsForAction(const QString& action) const override
    {
        return action == pressAction() ? QStringList{Words::tr("Return")} : QStringList();
    }

private:
    QPointer<LanesView> m_view;
    std::size_t m_index;
};

class LanesInterface : public QAccessibleWidget {
public:
    explicit LanesInterface(LanesView& view)
        : QAccessibleWidget(&view, QAccessible::List), m_view(&view)
    {
    }
    ~LanesInterface() override
    {
        for (const QAccessible::Id id : m_bars)
            QAccessible::deleteAccessibleInterface(id);
    }
    LanesInterface(const LanesInterface&) = delete;
    LanesInterface& operator=(const LanesInterface&) = delete;

    int childCount() const override { return static_cast<int>(m_view->barCount()); }

    /// An item describes whichever batch has the bar of that index.
    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        while (m_bars.size() <= static_cast<std::size_t>(index))
            m_bars.push_back(
                QAccessible::registerAccessibleInterface(new BarInterface(*m_view, m_bars.size())));
        return QAccessible::accessibleInterface(m_bars[static_cast<std::size_t>(index)]);
    }

    int indexOfChild(const QAccessibleInterface* child) const override
    {
        for (int i = 0; i < static_cast<int>(m_bars.size()); ++i) {
            if (QAccessible::accessibleInterface(m_bars[static_cast<std::size_t>(i)]) == child)
                return i;
        }
        return -1;
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        for (int i = 0; i < childCount(); ++i) {
            if (child(i)->rect().contains(x, y))
                return child(i);
        }
        return nullptr;
    }

    QAccessibleInterface* focusChild() const override
    {
        return m_view->hasFocus() ? child(static_cast<int>(m_view->currentIndex())) : nullptr;
    }

private:
    LanesView* m_view;
    mutable std::vector<QAccessible::Id> m_bars;
};

QAccessibleInterface* interfaceFor(const QString&, QObject* object)
{
    auto* view = qobject_cast<LanesView*>(object);
    return view ? new LanesInterface(*view) : nullptr;
}

} // namespace

void makeLanesAccessible()
{
    QAccessible::installFactory(interfaceFor);
}

void announceBarsChanged(LanesView& view)
{
    QAccessibleEvent event(&view, QAccessible::ObjectReorder);
    QAccessible::updateAccessibility(&event);
}

void announceFocus(LanesView& view, std::size_t bar)
{
    QAccessibleEvent event(&view, QAccessible::Focus);
    event.setChild(static_cast<int>(bar));
    QAccessible::updateAccessibility(&event);
}

} // namespace holdband::ui
