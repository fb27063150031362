// The past imports, the latest first. Each can be withdrawn as one unit, and restored.
#pragma once

#include "ui/tables/table_card.h"

#include "core/store/readings/imports.h"
#include "core/text/zone.h"

#include <optional>
#include <vector>

class QPushButton;

namespace holdband::ui {

class Session;

class PastImports : public TableCard {
    Q_OBJECT
public:
    explicit PastImports(Session& session, QWidget* parent = nullptr);

    void refresh();
    const std::vector<store::ImportLine>& lines() const { return m_lines; }
    QPushButton* button() const { return m_button; }

Q_SIGNALS:
    void failed(const QString& sentence);
    void filled();
    void done(const QString& sentence);

private:
    void takeLines(std::vector<store::ImportLine> lines, const Zone& zone);
    void showButton();
    void turn();
    const store::ImportLine* chosen() const;

    Session* m_session;
    std::vector<store::ImportLine> m_lines;
    QPushButton* m_button;
    std::optional<store::ImportId> m_picked; ///< selected by the user, not by the table
    bool m_filling = false;
};

} // namespace holdband::ui
