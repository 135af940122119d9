// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_view.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QMouseEvent>
#include <QTest>

namespace {

using side_view::BrushAct;
using side_view::SideView;
using Positions = std::vector<std::size_t>;
using soundings::Verdict;

/// The track of an invented day, 4 m between soundings, about 15 pixels.
class BrushTest : public testing::Test {
protected:
    void SetUp() override {
        view_.resize(900, 190);
        view_.setContent(support::starContent());
        view_.showTrack(0);
        view_.setChosen(chart::SoundingPick{0, middle}, true);
        view_.setChosen(std::nullopt, false);
        QObject::connect(&view_, &SideView::soundingsBrushed,
                         [this](int day, const Positions& soundings) {
                             EXPECT_EQ(day, 0);
                             strokes_.push_back(soundings);
                         });
        QObject::connect(&view_, &SideView::soundingClicked, [this] { ++clicks_; });
    }
    QPointF pixelOf(std::size_t i) const {
        const auto frame = side_view::frameOf(view_.profile(), QRectF(view_.rect()));
        return side_view::pixelOf(view_.profile().profile.points[i], frame, 1.0);
    }
    void send(QEvent::Type type, QPointF pixel) {
        const bool isHeld = type != QEvent::MouseButtonRelease;
        QMouseEvent event(type, pixel, view_.mapToGlobal(pixel),
                          type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton,
                          isHeld ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&view_, &event);
    }
    void strokeOver(std::size_t from, std::size_t to) {
        send(QEvent::MouseButtonPress, pixelOf(from));
        for (std::size_t i = from; i <= to; ++i) {
            send(QEvent::MouseMove, pixelOf(i));
        }
        send(QEvent::MouseButtonRelease, pixelOf(to));
    }
    /// The soundings from one to another that are kept, or are not.
    Positions judged(std::size_t from, std::size_t to, bool isKept) const {
        Positions found;
        for (std::size_t i = from; i <= to; ++i) {
            if ((view_.profile().profile.points[i].verdict == Verdict::kept) == isKept) {
                found.push_back(i);
            }
        }
        return found;
    }

    /// A spike of the invented day with kept soundings on both sides of it.
    static constexpr std::size_t middle = 97UL * 6;
    SideView view_;
    std::vector<Positions> strokes_;
    int clicks_ = 0;
};

TEST_F(BrushTest, SetsAsideWhatIsKeptAndWasDrawnOver) {
    view_.setBrush(BrushAct::setAside);
    EXPECT_EQ(view_.cursor().shape(), Qt::CrossCursor);
    strokeOver(middle - 4, middle + 4);
    ASSERT_EQ(strokes_.size(), 1U);
    EXPECT_EQ(strokes_[0], judged(middle - 4, middle + 4, true));
    EXPECT_EQ(strokes_[0].size(), 8U); // not the spike itself
    EXPECT_EQ(clicks_, 0);
}

TEST_F(BrushTest, TakesBackOnlyWhatWasSetAside) {
    view_.setBrush(BrushAct::takeBack);
    strokeOver(middle - 4, middle + 4);
    ASSERT_EQ(strokes_.size(), 1U);
    EXPECT_EQ(strokes_[0], Positions{middle});
}

TEST_F(BrushTest, MissesNothingBetweenTwoPlacesOfAFastHand) {
    view_.setBrush(BrushAct::setAside);
    send(QEvent::MouseButtonPress, pixelOf(middle + 1));
    send(QEvent::MouseMove, pixelOf(middle + 9));
    send(QEvent::MouseButtonRelease, pixelOf(middle + 9));
    ASSERT_EQ(strokes_.size(), 1U);
    EXPECT_EQ(strokes_[0], judged(middle + 1, middle + 9, true));
}

TEST_F(BrushTest, StaysInTheHandForTheNextStroke) {
    view_.setBrush(BrushAct::setAside);
    strokeOver(middle + 1, middle + 2);
    strokeOver(middle + 5, middle + 6);
    ASSERT_EQ(strokes_.size(), 2U);
    EXPECT_EQ(strokes_[1], (Positions{middle + 5, middle + 6}));
}

TEST_F(BrushTest, AStrokeThatMeetsNothingTellsNothing) {
    view_.setBrush(BrushAct::setAside);
    const QPointF sky(pixelOf(middle).x(), 4.0);
    send(QEvent::MouseButtonPress, sky);
    send(QEvent::MouseButtonRelease, sky);
    EXPECT_TRUE(strokes_.empty());
    EXPECT_EQ(clicks_, 0);
}

TEST_F(BrushTest, TakenAwayWithinAStrokeItChangesNothing) {
    view_.setBrush(BrushAct::setAside);
    send(QEvent::MouseButtonPress, pixelOf(middle + 1));
    send(QEvent::MouseMove, pixelOf(middle + 3));
    view_.setBrush(std::nullopt);
    send(QEvent::MouseButtonRelease, pixelOf(middle + 3));
    EXPECT_TRUE(strokes_.empty());
    EXPECT_EQ(view_.cursor().shape(), Qt::ArrowCursor);
}

TEST_F(BrushTest, IsSeenWithWhatItHasMet) {
    const QImage without = view_.grab().toImage();
    view_.setBrush(BrushAct::setAside);
    send(QEvent::MouseButtonPress, pixelOf(middle + 1));
    const QImage one = view_.grab().toImage();
    EXPECT_NE(one, without);
    send(QEvent::MouseMove, pixelOf(middle + 6));
    EXPECT_EQ(view_.profile().brush->met.size(), 6U);
    EXPECT_NE(view_.grab().toImage(), one);
}

TEST_F(BrushTest, DoesNotWorkOnACutThroughTheWater) {
    view_.showCut({-100, 0}, {100, 0});
    view_.setBrush(BrushAct::setAside);
    EXPECT_EQ(view_.cursor().shape(), Qt::ArrowCursor);
    send(QEvent::MouseButtonPress, {450, 100});
    send(QEvent::MouseButtonRelease, {450, 100});
    EXPECT_TRUE(strokes_.empty());
}

} // namespace
