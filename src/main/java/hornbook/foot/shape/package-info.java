/**
 * The foot as geometry: side profile and ground outline.
 *
 * <p>May use: {@code assessment}, {@code foot.number}.
 *
 * <p>Begin with {@link hornbook.foot.shape.SideProfile}.
 */
package hornbook.foot.shape;
