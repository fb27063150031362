#include "ui/theme/fold_button.h"

#include "ui/theme/theme.h"

#include <QAccessible>
#include <QAccessibleWidget>

namespace holdband::ui {

namespace {

class FoldInterface : public QAccessibleWidget {
public:
    explicit FoldInterface(FoldButton& button)
        : QAccessibleWidget(&button, QAccessible::Button), m_button(&button)
    {
    }

    QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.expandable = true;
        state.expanded = m_button->isChecked();
        state.collapsed = !m_button->isChecked();
        return state;
    }
    QStringList actionNames() const override
    {
        return QStringList{pressAction()} + QAccessibleWidget::actionNames();
    }
    void doAction(const QString& action) override
    {
        if (action == pressAction())
            m_button->click();
        else
            QAccessibleWidget::doAction(action);
    }

private:
    FoldButton* m_button;
};

QAccessibleInterface* foldInterfaceFor(const QString&, QObject* object)
{
    auto* button = qobject_cast<FoldButton*>(object);
    return button ? new FoldInterface(*button) : nullptr;
}

void announceFold(FoldButton& button)
{
    QAccessible::State state;
    state.expanded = true;
    state.collapsed = true; // those that have changed
    QAccessibleStateChangeEvent event(&button, state);
    QAccessible::updateAccessibility(&event);
}

} // namespace

FoldButton::FoldButton(QWidget* parent) : QPushButton(parent)
{
    static const bool installed = [] {
        QAccessible::installFactory(foldInterfaceFor);
        return true;
    }();
    Q_UNUSED(installed);
    setCheckable(true);
    setRole(this, "fold");
    connect(this, &QPushButton::toggled, this, [this] { announceFold(*this); });
}

} // namespace holdband::ui
