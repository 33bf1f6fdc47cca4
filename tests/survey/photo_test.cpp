// Photos by number, range and path, and the patterns of their names.
#include "survey/photo.hpp"

#include <gtest/gtest.h>

namespace tinworm::survey {
namespace {

yaml::Node scalar(std::string text) {
  yaml::Node node;
  node.kind = yaml::Node::Kind::scalar;
  node.place = {1, 1};
  node.text = std::move(text);
  return node;
}

Page page_with(const std::string& pattern) {
  Page page("");
  page.photos = {"photos", pattern};
  return page;
}

std::vector<std::string> paths(Page& page, const std::string& text) {
  std::vector<std::string> all;
  for (const Photo& photo : read_photos(page, scalar(text))) all.push_back(photo.path);
  return all;
}

TEST(NamedPhotos, AreNumbersRangesAndPaths) {
  const struct {
    std::string pattern, text;
    std::vector<std::string> paths;
  } cases[] = {
      {"{}.jpg", "14 15", {"photos/14.jpg", "photos/15.jpg"}},
      {"{}.jpg", "14, 15", {"photos/14.jpg", "photos/15.jpg"}},
      {"{}.jpg", "14,15", {"photos/14.jpg", "photos/15.jpg"}},
      {"{}.jpg", "14-16", {"photos/14.jpg", "photos/15.jpg", "photos/16.jpg"}},
      {"{}.jpg", "009-010", {"photos/009.jpg", "photos/010.jpg"}},
      {"{}.jpg", "8-9, a,b.jpg 3", {"photos/8.jpg", "photos/9.jpg", "a,b.jpg", "photos/3.jpg"}},
      {"{}.jpg", "14-16.jpg", {"14-16.jpg"}},
      {"IMG_{:04}.jpg", "14", {"photos/IMG_0014.jpg"}},
      {"IMG_{:04}.jpg", "0014", {"photos/IMG_0014.jpg"}},
      {"IMG_{:04}.jpg", "12345", {"photos/IMG_12345.jpg"}},
      {"IMG_{:04}.jpg", "9-10", {"photos/IMG_0009.jpg", "photos/IMG_0010.jpg"}},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    Page page = page_with(c.pattern);
    EXPECT_EQ(paths(page, c.text), c.paths);
    EXPECT_TRUE(page.problems.empty());
  }
}

TEST(NamedPhotos, AreRefusedWithOneMessage) {
  const std::string neither = "a photo is a number or the path of a JPEG file";
  const struct {
    std::string text, what, found, allowed, cure;
  } cases[] = {
      {"16-14", "a range of photos goes upward", "16-14", "14-16, up to 100 photos",
       "write the lower number first"},
      {"14-14", "a range of photos goes upward", "14-14", "14-16, up to 100 photos",
       "write the lower number first"},
      {"1-101", "a range has too many photos", "1-101", "14-16, up to 100 photos",
       "see to its numbers, or write several ranges"},
      {"1-1234567890", "a photo's number is too long", "1-1234567890", "14-16, up to 100 photos",
       "9 digits at most"},
      {"14-", neither, "14-", "14, 14-16, photos/sill.jpg", ""},
      {"14,", neither, "", "14, 14-16, photos/sill.jpg", ""},
      {"14-15-16", neither, "14-15-16", "14, 14-16, photos/sill.jpg", ""},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    Page page = page_with("{}.jpg");
    paths(page, c.text);
    ASSERT_EQ(page.problems.size(), 1u);
    EXPECT_EQ(page.problems[0].what, c.what);
    EXPECT_EQ(page.problems[0].found, c.found);
    EXPECT_EQ(page.problems[0].allowed, c.allowed);
    EXPECT_EQ(page.problems[0].cure, c.cure);
  }
}

}  // namespace
}  // namespace tinworm::survey
