#include "ui/window/welcome_page.h"

#include "ui/theme/theme.h"
#include "ui/theme/type_scale.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace holdband::ui {

WelcomePage::WelcomePage(bool withSample, QWidget* parent)
    : QWidget(parent), m_withSample(withSample), m_title(makeLabel({}, "title", this)),
      m_sentence(makeLabel({}, "muted", this)),
      m_sample(addButton(Words::tr("Open the &sample logbook"), true)),
      m_open(addButton(Words::tr("O&pen a logbook…"), false)),
      m_new(addButton(Words::tr("&New logbook…"), !withSample)),
      m_load(addButton(Words::tr("Load a &description…"), false)), m_steps(new FirstSteps(this))
{
    m_title->setFont(sized(m_title->font(), TypeSize::heading));
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_sample, m_load, m_new, m_open})
        buttons->addWidget(button);
    buttons->addStretch();
    auto* column = new QVBoxLayout;
    column->setSpacing(14);
    column->addStretch(2);
    column->addWidget(m_title);
    column->addWidget(m_sentence);
    column->addWidget(m_steps);
    column->addLayout(buttons);
    column->addStretch(3);
    auto* layout = new QHBoxLayout(this);
    layout->addStretch(1);
    layout->addLayout(column, 4);
    layout->addStretch(1);
    connect(m_sample, &QPushButton::clicked, this, &WelcomePage::sampleWanted);
    connect(m_open, &QPushButton::clicked, this, &WelcomePage::openWanted);
    connect(m_new, &QPushButton::clicked, this, &WelcomePage::newWanted);
    connect(m_load, &QPushButton::clicked, this, &WelcomePage::loadWanted);
    setTabOrder(m_sample, m_load);
    setTabOrder(m_load, m_new);
    setTabOrder(m_new, m_open);
    setState(State::noLogbook);
}

QPushButton* WelcomePage::addButton(const QString& text, bool main)
{
    auto* button = new QPushButton(text, this);
    if (main)
        setRole(button, "main");
    return button;
}

void WelcomePage::setState(State state, const QString& fileName)
{
    const bool none = state == State::noLogbook;
    m_title->setText(none ? Words::tr("A logbook for fermentation runs")
                          : Words::tr("%1: five steps to the first run").arg(fileName));
    m_sentence->setText(
        none ? (m_withSample
                    ? Words::tr("Look at the sample logbook first, or open one of your own.")
                    : Words::tr("Open a logbook, or make a new one."))
             : Words::tr("Take them in order. Everything can be changed later, and what "
                         "was done can be undone. If you have a description file, load it "
                         "instead."));
    m_steps->setVisible(!none);
    m_sample->setVisible(none && m_withSample);
    m_open->setVisible(none);
    m_new->setVisible(none);
    m_load->setVisible(!none);
}

QString WelcomePage::sentence() const
{
    return m_sentence->text();
}

} // namespace holdband::ui
