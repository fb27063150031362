#include "ui/forecast/setup_ticks.h"

#include "ui/words/words.h"

#include <QCheckBox>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

SetupTicks::SetupTicks(QWidget* parent) : Card(Words::tr("Setups"), parent) {}

void SetupTicks::setOffer(const results::NextBatchOffer& offer)
{
    std::vector<std::string> unticked;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        if (!m_boxes[i]->isChecked())
            unticked.push_back(m_names[i]);
    }
    if (m_names == offer.setups)
        return;
    clearLayout(contents());
    m_boxes.clear();
    m_names = offer.setups;
    for (const std::string& name : m_names) {
        auto* box = new QCheckBox(shown(name), this);
        box->setChecked(std::find(unticked.begin(), unticked.end(), name) == unticked.end());
        connect(box, &QCheckBox::toggled, this, &SetupTicks::changed);
        contents()->addWidget(box);
        m_boxes.push_back(box);
    }
}

std::vector<std::string> SetupTicks::ticked() const
{
    std::vector<std::string> names;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        if (m_boxes[i]->isChecked())
            names.push_back(m_names[i]);
    }
    return names;
}

} // namespace holdband::ui
