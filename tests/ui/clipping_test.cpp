// Lines and areas clipped at a rectangle's edge.
#include "ui/charts/clipping.h"

#include <gtest/gtest.h>
#include <random>

namespace holdband::ui::test {

const QRectF unit(0.0, 0.0, 10.0, 10.0);

double areaOf(const QPolygonF& polygon)
{
    double twice = 0.0;
    for (qsizetype i = 0; i < polygon.size(); ++i) {
        const QPointF a = polygon[i];
        const QPointF b = polygon[(i + 1) % polygon.size()];
        twice += a.x() * b.y() - b.x() * a.y();
    }
    return std::abs(twice) / 2.0;
}

TEST(Clipping, ALineInsideStaysInOnePiece)
{
    const QPolygonF line{{1, 1}, {2, 5}, {9, 9}};
    const auto parts = lineInside(line, unit);
    ASSERT_EQ(parts.size(), 1u);
    EXPECT_EQ(parts[0], line);
}

TEST(Clipping, ALineThatLeavesAndReturnsIsTwo)
{
    const auto parts = lineInside({{{2, 5}, {4, 15}, {6, 5}}}, unit);
    ASSERT_EQ(parts.size(), 2u);
    EXPECT_EQ(parts[0], QPolygonF({{2, 5}, {3, 10}}));
    EXPECT_EQ(parts[1], QPolygonF({{5, 10}, {6, 5}}));
}

TEST(Clipping, ALineOutsideIsNothing)
{
    EXPECT_TRUE(lineInside({{{-5, -5}, {-1, 20}, {20, 21}}}, unit).empty());
    EXPECT_TRUE(lineInside({{{3, 3}}}, unit).empty());
}

TEST(Clipping, AnAreaIsCutToWhatIsInside)
{
    EXPECT_DOUBLE_EQ(areaOf(areaInside({{{5, 5}, {15, 5}, {15, 15}, {5, 15}}}, unit)), 25.0);
    EXPECT_DOUBLE_EQ(areaOf(areaInside({{{-5, -5}, {15, -5}, {15, 15}, {-5, 15}}}, unit)), 100.0);
    EXPECT_TRUE(areaInside({{{11, 1}, {12, 1}, {12, 2}}}, unit).isEmpty());
}

TEST(Clipping, NoPartOfARandomLineIsOutsideAndAllInsideIsDrawn)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> place(-15.0, 25.0);
    for (int round = 0; round < 200; ++round) {
        QPolygonF line;
        for (int i = 0; i < 12; ++i)
            line << QPointF(place(random), place(random));
        double inside = 0.0; // by many small steps
        for (qsizetype i = 1; i < line.size(); ++i) {
            const QPointF way = (line[i] - line[i - 1]) / 2000.0;
            for (int k = 0; k < 2000; ++k) {
                const QPointF at = line[i - 1] + way * (k + 0.5);
                inside += unit.contains(at) ? std::hypot(way.x(), way.y()) : 0.0;
            }
        }
        double stored = 0.0;
        for (const QPolygonF& part : lineInside(line, unit)) {
            for (qsizetype i = 1; i < part.size(); ++i)
                stored += std::hypot(part[i].x() - part[i - 1].x(), part[i].y() - part[i - 1].y());
            for (const QPointF& point : part)
                EXPECT_TRUE(unit.adjusted(-1e-9, -1e-9, 1e-9, 1e-9).contains(point));
        }
        EXPECT_NEAR(stored, inside, 0.25) << "round " << round;
    }
}

} // namespace holdband::ui::test
