// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/copy_taker.h"

#include "app/edits/change_facts.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace {

using open_water::CopyTaker;
using open_water::OpenWater;

class TakesCopies : public testing::Test {
protected:
    void name(const char* name) {
        edits::changeFacts(open_, QStringLiteral("Name"),
                           [name](water::Water& water) { water.name = name; });
        ASSERT_TRUE(open_.finishKeeping());
    }
    [[nodiscard]] QString at(const char* name) const {
        return QString::fromStdString((folder_.path() / name).string());
    }

    const support::ScratchFolder folder_;
    const QString path_ = at("mere.gpkg");
    OpenWater open_;
};

TEST_F(TakesCopies, OfTheWaterAsItWasOpenedAndNotTwiceInAnHour) {
    CopyTaker taker(open_, store::Copies(at("copies").toStdString()));
    QSignalSpy taken(&taker, &CopyTaker::taken);
    ASSERT_TRUE(open_.create(path_, QStringLiteral("Mere")));
    taker.finish();
    EXPECT_EQ(taken.count(), 1);
    name("Heron Bay");
    taker.takeIfDue();
    taker.finish();
    EXPECT_EQ(taken.count(), 1);
    EXPECT_EQ(taker.copies().of(path_.toStdString()).size(), 1U);
}

TEST_F(TakesCopies, AndTellsOnceWhereNoneCanBeTaken) {
    CopyTaker taker(open_, store::Copies(folder_.file("file", "x") / "copies"));
    QSignalSpy failed(&open_, &OpenWater::failed);
    ASSERT_TRUE(open_.create(path_, QStringLiteral("Mere")));
    taker.finish();
    taker.takeIfDue();
    taker.finish();
    ASSERT_EQ(failed.count(), 1);
    const auto error = failed[0][0].value<base::Error>();
    EXPECT_EQ(error.kind, base::ErrorKind::unwritableOutput);
    EXPECT_NE(error.what.find("no copy of the water could be taken"), std::string::npos);
}

} // namespace
