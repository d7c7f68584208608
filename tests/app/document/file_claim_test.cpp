#include "app/desktop/document/file_claim.h"
#include "tests/support/catch.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace pumpwright;

namespace {

struct Folder {
    QTemporaryDir folder;
    QString claims = folder.filePath(QStringLiteral("open"));
    QString circuit = folder.filePath(QStringLiteral("van.pumpwright"));

    Folder() {
        QFile file(circuit);
        REQUIRE(file.open(QIODevice::WriteOnly));
    }
};

} // namespace

TEST_CASE("a file that one window works on can't be claimed by a second until the first gives it up",
          "[claim]") {
    Folder folder;
    FileClaim first(folder.claims);
    FileClaim second(folder.claims);
    CHECK(first.claim(folder.circuit));
    CHECK(first.claim(folder.circuit)); // its own
    CHECK_FALSE(second.claim(folder.circuit));
    CHECK(first.claim({}));
    CHECK(second.claim({}));
    CHECK(second.claim(folder.circuit));
}

TEST_CASE("a file is the same however its path is written", "[claim]") {
    Folder folder;
    FileClaim first(folder.claims);
    FileClaim second(folder.claims);
    REQUIRE(first.claim(folder.circuit));
    CHECK_FALSE(second.claim(folder.folder.filePath(QStringLiteral("./open/../van.pumpwright"))));
    const QString link = folder.folder.filePath(QStringLiteral("link.pumpwright"));
    REQUIRE(QFile::link(folder.circuit, link));
    CHECK_FALSE(second.claim(link));
}

TEST_CASE("different files don't stand in each other's way", "[claim]") {
    Folder folder;
    FileClaim first(folder.claims);
    FileClaim second(folder.claims);
    CHECK(first.claim(folder.circuit));
    CHECK(second.claim(folder.folder.filePath(QStringLiteral("other.pumpwright"))));
}

TEST_CASE("a folder that can't be written claims nothing and warns of nothing", "[claim]") {
    FileClaim claim(QStringLiteral("/proc/nowhere"));
    Folder folder;
    CHECK(claim.claim(folder.circuit));
}
