// The heading of a card as a button that folds it. Says to assistive technology whether it is
// expanded or collapsed, instead of checked or not.
#pragma once

#include <QPushButton>

namespace holdband::ui {

class FoldButton : public QPushButton {
    Q_OBJECT
public:
    /// Checked: expanded.
    explicit FoldButton(QWidget* parent);
};

} // namespace holdband::ui
