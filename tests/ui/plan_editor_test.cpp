// The plan editor: typed values are drawn, dragged values appear in the table.
#include "core/text/times.h"
#include "tests/ui/form_samples.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/quantity_field.h"
#include "ui/plans/plan_drawing.h"
#include "ui/plans/plan_editor.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

/// Primary 66 °F for 10 days, up to 70 °F over 24 h, crash to 34 °F to the end; ± 3 °F.
PlanValue usualPlan()
{
    PlanValue plan;
    plan.schedule = {stage("Primary", 66, Hours{240}), stage("Rest", 70, Hours{24}),
                     stage("Crash", 34, {})};
    plan.schedule[1].kind = StageKind::ramp;
    plan.tolerance = TemperatureDifference::fahrenheitDegrees(3);
    return plan;
}

class PlanEditorTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        editor.setFormat(us());
        editor.setPlan(usualPlan());
        editor.resize(900, 560);
        editor.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&editor));
    }

    void set(int row, PlanColumn column, const QString& text)
    {
        editor.table()->model()->setCell(row, column, text);
    }
    QString refused(int row, PlanColumn column)
    {
        return editor.table()->model()->refusalAt(row, column);
    }
    std::string problem()
    {
        const auto plan = editor.plan();
        return plan ? std::string() : plan.error().sentence();
    }
    void drag(QPointF from, QPointF to)
    {
        PlanDrawing* drawing = editor.drawing();
        QTest::mousePress(drawing, Qt::LeftButton, {}, from.toPoint());
        QMouseEvent move(QEvent::MouseMove, to, drawing->mapToGlobal(to), Qt::NoButton,
                         Qt::LeftButton, {});
        QCoreApplication::sendEvent(drawing, &move);
        QTest::mouseRelease(drawing, Qt::LeftButton, {}, to.toPoint());
    }

    PlanEditor editor;
};

} // namespace

TEST_F(PlanEditorTest, ShowsAPlanAndReturnsItToTheBit)
{
    PlanValue odd = usualPlan();
    odd.schedule[0].target = Temperature::celsius(18.123456789);
    odd.schedule[0].settleAllowed = Hours{36.123456};
    editor.setPlan(odd);
    const auto plan = editor.plan();
    ASSERT_TRUE(plan);
    EXPECT_EQ(*plan, odd);
    EXPECT_EQ(editor.table()->model()->rows()[0].cells[planLasts], "10 d");
    EXPECT_EQ(editor.table()->model()->rows()[1].cells[planKind], "ramp");
}

TEST_F(PlanEditorTest, TheTableModelPassesTheTester)
{
    const QAbstractItemModelTester tester(editor.table()->model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    set(0, planEnds, untilText(StageUntil::gravity));
    set(0, planGravity, "1.012");
    editor.table()->addRow();
    editor.table()->moveRow(-1);
    editor.table()->removeRow();
    EXPECT_EQ(editor.table()->model()->rowCount(), 3);
}

TEST_F(PlanEditorTest, DrawsWhileItIsTyped)
{
    set(0, planTarget, "19 C");
    set(0, planLasts, "36");
    ASSERT_EQ(editor.drawing()->stages().size(), 3u);
    const DrawnStage& first = editor.drawing()->stages()[0];
    EXPECT_DOUBLE_EQ(first.stage.target.celsius(), 19.0);
    EXPECT_DOUBLE_EQ(first.to, 36.0);
    EXPECT_DOUBLE_EQ(first.settling, 36.0); // 48 h are allowed, and it lasts 36
    EXPECT_DOUBLE_EQ(editor.drawing()->stages()[1].from, 36.0);
    EXPECT_FALSE(editor.drawing()->stages()[2].endKnown);
    EXPECT_EQ(editor.table()->model()->rows()[1].cells[planBegins], "day 1");
    set(0, planTarget, "cold");
    EXPECT_EQ(editor.drawing()->stages().size(), 2u) << "what can be read is still drawn";
    EXPECT_EQ(editor.drawing()->stages()[0].row, 1);
    EXPECT_EQ(editor.table()->model()->rows()[0].cells[planTarget], "cold");
    EXPECT_EQ(editor.table()->model()->rows()[1].cells[planBegins], "") << "the time is unknown";
}

TEST_F(PlanEditorTest, ShowsWhenEachStageBegins)
{
    editor.setPitched(*parseRfc3339("2026-03-08T01:00:00Z"));
    // Ten times 24 hours later, because the clocks went forward on 8 March.
    EXPECT_EQ(editor.table()->model()->rows()[1].cells[planBegins], "day 10, 17 Mar 19:00");
    set(0, planEnds, untilText(StageUntil::turnedDown));
    EXPECT_EQ(editor.table()->model()->rows()[1].cells[planBegins], "after Primary");
}

TEST_F(PlanEditorTest, AStageMayWaitForTheBrewerOrForAGravity)
{
    set(0, planEnds, untilText(StageUntil::gravity));
    EXPECT_FALSE(refused(0, planGravity).isEmpty());
    set(0, planGravity, "1.012");
    set(0, planLasts, "");
    const auto plan = editor.plan();
    ASSERT_TRUE(plan) << problem();
    EXPECT_EQ(plan->schedule[0].until, StageUntil::gravity);
    EXPECT_EQ(plan->schedule[0].untilGravity, Gravity::specific(1.012));
    EXPECT_EQ(plan->schedule[0].length, std::nullopt);
    set(0, planEnds, untilText(StageUntil::turnedDown));
    ASSERT_TRUE(editor.plan());
    EXPECT_EQ(editor.plan()->schedule[0].untilGravity, std::nullopt);
}

TEST_F(PlanEditorTest, UglyPlansAreRefusedAtTheirPlace)
{
    set(0, planLasts, "-5");
    EXPECT_EQ(refused(0, planLasts), "the hours must be above 0");
    EXPECT_FALSE(editor.plan());
    EXPECT_EQ(editor.table()->view()->currentIndex(), editor.table()->model()->index(0, planLasts));
    EXPECT_EQ(editor.table()->model()->rows()[0].cells[planLasts], "-5");
    set(0, planLasts, "10 d");
    set(0, planKind, "ramp");
    EXPECT_EQ(problem(), "stage 1 (Primary): a ramp needs a stage before it; begin with a hold.");
    EXPECT_TRUE(editor.words().contains("a ramp needs a stage before it"));
    set(0, planKind, "hold");
    set(0, planLasts, "");
    EXPECT_TRUE(
        problem().starts_with("stage 1 (Primary): only the last stage may be without hours"));
    set(0, planLasts, "10 d");
    set(1, planLasts, "");
    EXPECT_EQ(refused(1, planLasts), "a ramp needs hours");
    set(1, planLasts, "24");
    set(2, planBand, "0");
    EXPECT_EQ(refused(2, planBand), "the band must be above 0");
    set(2, planBand, "");
    editor.band()->edit()->setText("0");
    EXPECT_EQ(problem(), "it must be above 0.");
    editor.band()->edit()->clear();
    EXPECT_TRUE(problem().find("has a tolerance") != std::string::npos) << problem();
    editor.setPlan({});
    EXPECT_EQ(problem(), "the schedule has no stage; give at least one.");
}

TEST_F(PlanEditorTest, AsksAboutFreezingAndHot)
{
    set(2, planTarget, "30");
    ASSERT_TRUE(editor.plan());
    EXPECT_EQ(editor.questions(),
              QStringList{"The target of Crash is 30.0 °F, below freezing. Is that intended?"});
    set(2, planTarget, "111");
    EXPECT_EQ(editor.questions(),
              QStringList{
                  "The target of Crash is 111.0 °F, hotter than beer ferments. Is that intended?"});
    set(2, planTarget, "110");
    EXPECT_TRUE(editor.questions().isEmpty());
}

TEST_F(PlanEditorTest, DraggingATargetTypesIt)
{
    const PlanMap map = editor.drawing()->map();
    const double y = map.y(Temperature::fahrenheit(66).celsius());
    const double to = map.y(Temperature::fahrenheit(68.1).celsius());
    drag({map.x(100), y}, {map.x(100), to});
    EXPECT_EQ(editor.table()->model()->rows()[0].cells[planTarget], "68");
    EXPECT_EQ(editor.table()->currentRow(), 0);
    EXPECT_EQ(editor.plan()->schedule[0].target, Temperature::fahrenheit(68));
}

TEST_F(PlanEditorTest, DraggingAnEdgeTypesTheLength)
{
    const PlanMap map = editor.drawing()->map();
    ASSERT_GT(map.pixelsPerHour(), 0.5);
    const double y = map.plot.top() + 4;
    drag({map.x(240), y}, {map.x(193), y});
    EXPECT_EQ(editor.table()->model()->rows()[0].cells[planLasts], "8 d");
    const PlanMap closer = editor.drawing()->map();
    ASSERT_GE(closer.pixelsPerHour(), 3.0); // so that a step is an hour
    drag({closer.x(192), y}, {closer.x(-50), y});
    EXPECT_EQ(editor.table()->model()->rows()[0].cells[planLasts], "1 h") << "never below one step";
}

TEST(PlanLayout, SnapsToHalfDegreesAndWholeHours)
{
    EXPECT_EQ(snappedTarget(Temperature::fahrenheit(66.3).celsius(), TemperatureUnit::fahrenheit),
              Temperature::fahrenheit(66.5));
    EXPECT_EQ(snappedTarget(19.1, TemperatureUnit::celsius), Temperature::celsius(19.0));
    EXPECT_EQ(snappedLength(35.4, 4.0), Hours{35});
    EXPECT_EQ(snappedLength(35.4, 1.0), Hours{36});
    EXPECT_EQ(snappedLength(35.4, 0.1), Hours{36});
    EXPECT_EQ(snappedLength(-3.0, 4.0), Hours{1});
}

TEST(PlanLayout, AnEmptyPlanIsNoProblem)
{
    PlanDrawing drawing;
    drawing.resize(400, 200);
    drawing.setPlan({}, us());
    EXPECT_FALSE(drawing.grab().isNull());
    EXPECT_TRUE(drawing.accessibleDescription().isEmpty());
}

} // namespace holdband::ui
