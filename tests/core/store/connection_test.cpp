// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include "core/store/statement.h"
#include "core/store/transaction.h"
#include "tests/support/scratch_folder.h"

#include <cmath>

#include <gtest/gtest.h>
#include <sqlite3.h>

namespace {

using base::ErrorKind;
using store::Connection;
using support::ScratchFolder;

struct Answer {
    int code;
    ErrorKind kind;
    const char* what;
    const char* whatToDo;
};

TEST(ErrorOfTheDatabase, SaysInWordsWhatItsNumberMeans) {
    const std::array answers{
        Answer{SQLITE_CORRUPT, ErrorKind::damagedWater, "the water file is damaged",
               "take a copy that is whole"},
        Answer{SQLITE_NOTADB, ErrorKind::damagedWater, "the water file is damaged",
               "take a copy that is whole"},
        Answer{SQLITE_FORMAT, ErrorKind::damagedWater, "the water file is damaged",
               "take a copy that is whole"},
        Answer{SQLITE_CORRUPT_INDEX, ErrorKind::damagedWater, "the water file is damaged",
               "take a copy that is whole"},
        Answer{SQLITE_ERROR, ErrorKind::damagedWater,
               "the water file's tables are not as they should be (no such thing)",
               "take a copy that is whole"},
        Answer{SQLITE_FULL, ErrorKind::unwritableOutput, "the disk is full; nothing was changed",
               "make room and save again"},
        Answer{SQLITE_READONLY, ErrorKind::unwritableOutput, "the water file may only be read",
               "allow writing to the file and its folder, or save under another name"},
        Answer{SQLITE_READONLY_DIRECTORY, ErrorKind::unwritableOutput,
               "the water file may only be read",
               "allow writing to the file and its folder, or save under another name"},
        Answer{SQLITE_PERM, ErrorKind::unwritableOutput, "the water file may only be read",
               "allow writing to the file and its folder, or save under another name"},
        Answer{SQLITE_READONLY_DBMOVED, ErrorKind::unwritableOutput,
               "the water file was moved or deleted while it was open; nothing was saved",
               "open it where it is now, or save under another name"},
        Answer{SQLITE_BUSY, ErrorKind::waterInUse, "another program is using the water file",
               "close it there and try again"},
        Answer{SQLITE_LOCKED, ErrorKind::waterInUse, "another program is using the water file",
               "close it there and try again"},
        Answer{SQLITE_CANTOPEN, ErrorKind::unwritableOutput, "the water file cannot be opened",
               "check that the folder is there and that you may write in it"},
        Answer{SQLITE_IOERR_READ, ErrorKind::damagedWater,
               "the water file cannot be read to its end", "take a copy that is whole"},
        Answer{SQLITE_IOERR_SHORT_READ, ErrorKind::damagedWater,
               "the water file cannot be read to its end", "take a copy that is whole"},
        Answer{SQLITE_IOERR_FSYNC, ErrorKind::unwritableOutput,
               "the disk does not take what is written; nothing was changed",
               "check the disk and save again"},
        Answer{SQLITE_CONSTRAINT_CHECK, ErrorKind::wrongUse,
               "a value cannot be kept (no such thing); nothing was changed",
               "correct the value and save again"},
        Answer{SQLITE_MISMATCH, ErrorKind::unwritableOutput,
               "the water file refuses a change (no such thing); nothing was changed",
               "save under another name"}};
    for (const Answer& answer : answers) {
        const base::Error error = store::errorOf(answer.code, "no such thing", "a.gpkg");
        EXPECT_EQ(error.kind, answer.kind) << answer.code;
        EXPECT_EQ(error.what, answer.what);
        EXPECT_EQ(error.where, "a.gpkg");
        EXPECT_EQ(error.whatToDo, answer.whatToDo);
    }
}

class AConnection : public testing::Test {
protected:
    void SetUp() override {
        connection_->execute("CREATE TABLE t (id INTEGER PRIMARY KEY, a, b)");
        ASSERT_TRUE(connection_->outcome().has_value());
    }
    [[nodiscard]] std::unique_ptr<Connection> another() const {
        auto other = Connection::open(path_, Connection::Access::existing).value();
        other->execute("PRAGMA busy_timeout=0");
        return other;
    }
    [[nodiscard]] std::int64_t count() {
        store::Statement rows(*connection_, "SELECT count(*) FROM t");
        rows.ask();
        return rows.next() ? rows.wholeNumber(0) : -1;
    }

    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "a.gpkg";
    const std::unique_ptr<Connection> connection_ =
        Connection::open(path_, Connection::Access::create).value();
};

TEST_F(AConnection, WaitsThreeSecondsForAnotherProgram) {
    store::Statement wait(*connection_, "SELECT timeout FROM pragma_busy_timeout");
    wait.ask();
    ASSERT_TRUE(wait.next());
    EXPECT_EQ(wait.wholeNumber(0), 3000);
}

TEST_F(AConnection, ThatIsNotThereIsNotMade) {
    const auto nowhere = folder_.path() / "nowhere.gpkg";
    const auto opened = Connection::open(nowhere, Connection::Access::existing);
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().kind, ErrorKind::unusableInput);
    EXPECT_EQ(opened.error().where, nowhere.string());
    EXPECT_EQ(opened.error().whatToDo, "check the name, and that you may read it");
    EXPECT_FALSE(std::filesystem::exists(nowhere));
    const auto made =
        Connection::open(folder_.path() / "no" / "folder.gpkg", Connection::Access::create);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().kind, ErrorKind::unwritableOutput);
}

TEST_F(AConnection, RemembersItsFirstFailureAndDoesNothingAfterIt) {
    connection_->failDamaged("first");
    connection_->failDamaged("second");
    EXPECT_FALSE(connection_->isFine());
    connection_->execute("INSERT INTO t (a) VALUES (1)");
    store::Statement insert(*connection_, "INSERT INTO t (a) VALUES (2)");
    insert.run();
    const auto outcome = connection_->outcome();
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().kind, ErrorKind::damagedWater);
    EXPECT_EQ(outcome.error().what, "first");
    EXPECT_EQ(outcome.error().where, path_.string());
    EXPECT_TRUE(connection_->outcome().has_value()) << "asked twice";
    EXPECT_EQ(count(), 0);
}

TEST_F(AConnection, TakesAWholeTransactionOrNothingOfIt) {
    {
        const store::Transaction broken(*connection_);
        connection_->execute("INSERT INTO t (a) VALUES (1)");
    }
    EXPECT_EQ(count(), 0) << "never committed";
    {
        store::Transaction failed(*connection_);
        connection_->execute("INSERT INTO t (a) VALUES (1)");
        connection_->fail(base::cancelled());
        EXPECT_FALSE(failed.commit().has_value());
    }
    EXPECT_EQ(count(), 0);
    {
        store::Transaction done(*connection_);
        connection_->execute("INSERT INTO t (a) VALUES (1)");
        EXPECT_TRUE(done.commit().has_value());
    }
    EXPECT_EQ(count(), 1);
    auto other = another();
    other->execute("INSERT INTO t (a) VALUES (2)");
    EXPECT_TRUE(other->outcome().has_value()) << "the file is let go of";
}

TEST_F(AConnection, KeepsOtherWritersOutFromTheBeginOfATransaction) {
    auto other = another();
    const store::Transaction transaction(*connection_);
    other->execute("BEGIN IMMEDIATE");
    EXPECT_FALSE(other->outcome().has_value());
}

TEST_F(AConnection, ReadsOneStateUntilItLetsGo) {
    auto other = another();
    {
        const store::Reading reading(*connection_);
        EXPECT_EQ(count(), 0);
        other->execute("INSERT INTO t (a) VALUES (1)");
        EXPECT_FALSE(other->outcome().has_value());
        EXPECT_EQ(count(), 0);
    }
    other->execute("INSERT INTO t (a) VALUES (1)");
    EXPECT_TRUE(other->outcome().has_value());
    EXPECT_EQ(count(), 1);
}

TEST_F(AConnection, GivesBackEachKindOfValueAndSaysWhereItIsAnother) {
    store::Statement insert(*connection_, "INSERT INTO t (id, a, b) VALUES (?, ?, ?)");
    const std::string text("a\0b", 3);
    insert.run(1, text, std::nullopt);
    insert.run(2, std::string_view(), store::Blob());
    insert.run(3, std::optional<double>(0.1), std::optional<double>());
    store::Statement rows(*connection_, "SELECT id, a, b FROM t WHERE id >= ? ORDER BY id");
    rows.ask(1);
    ASSERT_TRUE(rows.next());
    EXPECT_EQ(rows.text(1), "a b") << "harmless";
    EXPECT_TRUE(rows.isEmpty(2));
    EXPECT_EQ(rows.numberIfAny(2), std::nullopt);
    EXPECT_EQ(rows.textIfAny(2), std::nullopt);
    EXPECT_EQ(rows.textIfAny(1), "a b");
    EXPECT_EQ(rows.number(0), 1.0) << "a whole number is a number";
    ASSERT_TRUE(rows.next());
    EXPECT_EQ(rows.text(1), "");
    EXPECT_FALSE(rows.isEmpty(1));
    EXPECT_TRUE(rows.blob(2).empty());
    EXPECT_FALSE(rows.isEmpty(2));
    ASSERT_TRUE(rows.next());
    EXPECT_EQ(rows.number(1), 0.1);
    EXPECT_TRUE(connection_->isFine());
    static_cast<void>(rows.wholeNumber(1));
    EXPECT_EQ(connection_->outcome().error().what,
              "column a holds something that is no whole number");
    static_cast<void>(rows.text(1));
    EXPECT_EQ(connection_->outcome().error().what, "column a holds something that is no text");
    static_cast<void>(rows.blob(1));
    EXPECT_EQ(connection_->outcome().error().what,
              "column a holds something that is no row of bytes");
    static_cast<void>(rows.number(2));
    const auto none = connection_->outcome();
    EXPECT_EQ(none.error().what, "column b holds something that is no number");
    EXPECT_EQ(none.error().kind, ErrorKind::damagedWater);
    rows.ask(4);
    EXPECT_FALSE(rows.next());
}

TEST_F(AConnection, KeepsNoNumberThatIsNone) {
    store::Statement insert(*connection_, "INSERT INTO t (a) VALUES (?)");
    insert.run(std::nan(""));
    const auto outcome = connection_->outcome();
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().kind, ErrorKind::wrongUse);
    EXPECT_EQ(outcome.error().where, path_.string());
    EXPECT_EQ(count(), 0);
}

TEST_F(AConnection, AsksWithTextsThatAreGoneByThen) {
    connection_->execute("INSERT INTO t (a) VALUES ('a text longer than any small buffer is')");
    store::Statement rows(*connection_, "SELECT id FROM t WHERE a=?");
    std::string wanted = "a text longer than any small buffer is";
    rows.ask(wanted);
    wanted.assign(wanted.size(), 'x');
    EXPECT_TRUE(rows.next());
}

} // namespace
