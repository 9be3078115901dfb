#include "core/bytes/byte_source.h"

#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

namespace afterbeat {
namespace {

namespace fs = std::filesystem;

/// A folder of its own for each test.
class Files : public testing::Test {
protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "afterbeat-bytes-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override { fs::remove_all(folder_); }

  [[nodiscard]] fs::path path(const std::string& name) const { return folder_ / name; }

  static void put(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
  }
  static std::string get(const fs::path& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
  }
  [[nodiscard]] std::size_t fileCount() const {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }

private:
  fs::path folder_;
};

std::string textAt(ByteSource& source, std::uint64_t offset, std::size_t size) {
  std::string text(size, '?');
  const auto n = source.read(offset, text);
  EXPECT_TRUE(n);
  text.resize(n.value_or(0));
  return text;
}

void readsAnywhere(ByteSource& source) {
  EXPECT_EQ(source.size(), 10U);
  EXPECT_EQ(textAt(source, 0, 10), "0123456789");
  EXPECT_EQ(textAt(source, 3, 4), "3456");
  EXPECT_EQ(textAt(source, 8, 100), "89");
  EXPECT_EQ(textAt(source, 10, 5), "");
  EXPECT_EQ(textAt(source, 1000, 5), "");
  EXPECT_EQ(textAt(source, 2, 0), "");
}

TEST(MemorySource, readsAnywhere) {
  MemorySource source("0123456789");
  readsAnywhere(source);
}

TEST_F(Files, areReadAnywhere) {
  put(path("digits"), "0123456789");
  const auto source = openFile(path("digits"));
  ASSERT_TRUE(source);
  readsAnywhere(**source);
}

TEST_F(Files, thatAreNoneAreRefusedInWords) {
  EXPECT_EQ(openFile(path("nothing")).error().what, "no such file or folder");
  EXPECT_EQ(openFile(path(".")).error().what, "it is a folder");
  ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
  EXPECT_EQ(openFile(path("pipe")).error().what, "it is not an ordinary file");
}

TEST_F(Files, areReadWholeUpToALimit) {
  MemorySource source("0123456789");
  EXPECT_EQ(readAll(source, 10).value(), "0123456789");
  EXPECT_FALSE(readAll(source, 9));
  MemorySource empty("");
  EXPECT_EQ(readAll(empty, 0).value(), "");
}

TEST_F(Files, areWrittenNewAndReplaced) {
  const auto write = [&](const std::string& text) {
    return replaceFile(path("a"), [&](const ByteSink& sink) { return sink(text) && sink("!"); });
  };
  ASSERT_TRUE(write("one"));
  EXPECT_EQ(get(path("a")), "one!");
  const std::string large(5000000, 'x');
  ASSERT_TRUE(write(large));
  EXPECT_EQ(get(path("a")), large + "!");
  ASSERT_TRUE(write(""));
  EXPECT_EQ(get(path("a")), "!");
  EXPECT_EQ(fileCount(), 1U);
}

TEST_F(Files, keepTheirRightsWhenReplaced) {
  put(path("a"), "old");
  fs::permissions(path("a"), fs::perms::owner_read | fs::perms::owner_write);
  ASSERT_TRUE(replaceFile(path("a"), [](const ByteSink& sink) { return sink("new"); }));
  EXPECT_EQ(get(path("a")), "new");
  EXPECT_EQ(fs::status(path("a")).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(Files, stayWhenTheWriterGivesUp) {
  put(path("a"), "old");
  const auto result = replaceFile(path("a"), [](const ByteSink& sink) {
    EXPECT_TRUE(sink("half of it"));
    return false;
  });
  EXPECT_FALSE(result);
  EXPECT_EQ(get(path("a")), "old");
  EXPECT_EQ(fileCount(), 1U);
}

TEST_F(Files, stayWhenTheDiskIsFull) {
  put(path("a"), "old");
  // A limit on the size of files stands for a disk without room.
  rlimit before{};
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
  rlimit small = before;
  small.rlim_cur = 4096;
  const auto handler = std::signal(SIGXFSZ, SIG_IGN);
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  bool refused = false;
  const auto result = replaceFile(path("a"), [&](const ByteSink& sink) {
    const std::string piece(700000, 'x');
    for (int i = 0; i < 10 && !refused; ++i) {
      refused = !sink(piece);
    }
    return !refused;
  });
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &before), 0);
  std::signal(SIGXFSZ, handler);
  EXPECT_TRUE(refused);
  EXPECT_FALSE(result);
  EXPECT_EQ(get(path("a")), "old");
  EXPECT_EQ(fileCount(), 1U);
}

TEST_F(Files, areReplacedWhereALinkPoints) {
  put(path("target"), "old");
  fs::create_symlink(path("target"), path("link"));
  ASSERT_TRUE(replaceFile(path("link"), [](const ByteSink& sink) { return sink("new"); }));
  EXPECT_TRUE(fs::is_symlink(path("link")));
  EXPECT_EQ(get(path("target")), "new");
}

TEST_F(Files, cannotTakeThePlaceOfFolders) {
  const auto fill = [](const ByteSink& sink) { return sink("x"); };
  EXPECT_EQ(replaceFile(path("."), fill).error().what, "it is a folder");
  EXPECT_EQ(replaceFile(path("nowhere") / "a", fill).error().what, "no such file or folder");
  ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
  EXPECT_EQ(replaceFile(path("pipe"), fill).error().what, "it is not an ordinary file");
}

} // namespace
} // namespace afterbeat
